/** A set as a ticket sees it. */
interface PackedSet {
  readonly pieces: number;
  /** Whole minor units for all of its pieces. */
  readonly price: number;
  /** Which pieces of the ticket it may hold, by their place on it. */
  readonly fits: readonly boolean[];
}

export interface Packed {
  /** How many of each set. */
  readonly counts: readonly number[];
  /** What they take off together, whole minor units. */
  readonly savesMinor: number;
  /** The pieces of each set, the dearest first. */
  readonly held: readonly (readonly number[])[];
}

/** Pieces looked at before the best packing so far is taken: 3,000 packings of a ticket of six (the product’s own choice). */
const MOST_LOOKS = 20_000;

/**
 * So many of each set out of the pieces of a ticket, none of which is in two of them, that the customer pays least for
 * all.
 *
 * @param prices of the pieces, whole minor units, the dearest first
 * @returns null where there are not pieces enough
 */
export function packSets(
  sets: readonly PackedSet[],
  prices: readonly number[],
  counts: readonly number[],
): Packed | null {
  const places = sets.map(({ pieces }, at) => pieces * (counts[at] ?? 0));
  const held = sets.map((): number[] => []);
  let toFill = places.reduce((sum, many) => sum + many, 0);
  // Dearest first, each taken if all before it can stay, whichever set they go to: no other choice comes to more.
  for (let piece = 0; piece < prices.length && toFill > 0; piece += 1) {
    if (place(piece, new Set())) toFill -= 1;
  }
  if (toFill > 0) return null;
  const asked = sets.reduce((sum, { price }, at) => sum + price * (counts[at] ?? 0), 0);
  const paid = held.flat().reduce((sum, piece) => sum + (prices[piece] ?? 0), 0);
  const inOrder = held.map((pieces) => pieces.toSorted((one, other) => one - other));
  return { counts, savesMinor: paid - asked, held: inOrder };

  /** Finds a piece its set, moving others to sets that have room. */
  function place(piece: number, tried: Set<number>): boolean {
    for (const [at, pieces] of held.entries()) {
      if (sets[at]?.fits[piece] !== true || tried.has(at)) continue;
      tried.add(at);
      if (pieces.length < (places[at] ?? 0)) {
        pieces.push(piece);
        return true;
      }
      const moved = pieces.findIndex((other) => place(other, tried));
      if (moved < 0) continue;
      pieces.splice(moved, 1, piece);
      return true;
    }
    return false;
  }
}

/**
 * How many of each set make a ticket cheapest: of every number of each, as far as {@link MOST_LOOKS} reaches.
 *
 * @param prices of the pieces, whole minor units, the dearest first
 */
export function bestPacking(sets: readonly PackedSet[], prices: readonly number[]): Packed {
  const none = { counts: sets.map(() => 0), savesMinor: 0, held: sets.map(() => []) };
  let best: Packed = none;
  let looks = 0;
  /** Tries one more of each set from one on: what has not pieces enough has not with more. */
  const tryMore = (counts: readonly number[], from: number): void => {
    for (let at = from; at < sets.length && looks < MOST_LOOKS; at += 1) {
      looks += prices.length;
      const packed = packSets(sets, prices, counts.with(at, (counts[at] ?? 0) + 1));
      if (packed === null) continue;
      if (packed.savesMinor > best.savesMinor) best = packed;
      tryMore(packed.counts, at);
    }
  };
  tryMore(none.counts, 0);
  return best;
}
