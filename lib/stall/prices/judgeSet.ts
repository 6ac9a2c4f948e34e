/** What a set of several pieces for one price leaves, beside the same pieces one by one. Currency units, unrounded. */
export interface SetJudged {
  /** What the same pieces cost one by one at the price that sells most. */
  readonly singles: number;
  /** What the customer saves; less than 0 where the set is dearer. */
  readonly saves: number;
  /** What the set leaves, its making paid, and what its pieces leave one by one. */
  readonly leaves: number;
  readonly singlesLeave: number;
  /** What one piece alone leaves. */
  readonly oneLeaves: number;
  /**
   * Share of those who buy the set that may have bought all its pieces anyway before the set costs more than it brings;
   * 0 where it never pays, 1 where it always does.
   */
  readonly mayHaveBought: number;
  readonly cautions: readonly (
    | { readonly kind: 'aboveSingles' }
    /** Of some goods only: there are cheaper ones, which are better bought one by one. */
    | { readonly kind: 'aboveCheapest'; readonly singles: number }
    /** Its price with which the making is paid; null where fees and tax take all of any. */
    | { readonly kind: 'belowMaking'; readonly floor: number | null }
  )[];
}

/** Goods that can be part of the set. */
interface InSet {
  readonly price: number;
  readonly sold: number;
  /** Of a piece: what its making and its packaging take. */
  readonly takes: number;
  readonly keptOf: (price: number) => number;
}

/**
 * @param pieces 2 or more
 * @param price of the set
 * @returns null where nothing can be part of it
 */
export function judgeSet(
  { pieces, price }: { readonly pieces: number; readonly price: number },
  goods: readonly InSet[],
): SetJudged | null {
  const usual = commonestPrice(goods);
  if (usual === null) return null;
  const singles = pieces * usual;
  const takes = pieces * meanOf(goods, (one) => one.takes);
  // Each piece bears its part of what a ticket costs, for a set as for pieces one by one.
  const kept = pieces * meanOf(goods, (one) => one.keptOf(price / pieces));
  const oneLeaves = meanOf(goods, (one) => one.keptOf(one.price) - one.takes);
  const leaves = kept - takes;
  const singlesLeave = pieces * oneLeaves;
  const cheapest = pieces * Math.min(...goods.map((one) => one.price));
  return {
    singles,
    saves: singles - price,
    leaves,
    singlesLeave,
    oneLeaves,
    mayHaveBought: shareThatMay(leaves - oneLeaves, singlesLeave - leaves),
    cautions: [
      ...(price > singles
        ? [{ kind: 'aboveSingles' } as const]
        : price > cheapest
          ? [{ kind: 'aboveCheapest', singles: cheapest } as const]
          : []),
      ...(leaves < 0 ? [{ kind: 'belowMaking', floor: floorOf(pieces, goods, takes) } as const] : []),
    ],
  };
}

/** @returns the price at which most is sold, the lower of two; null of nothing. */
export function commonestPrice(
  goods: readonly { readonly price: number; readonly sold: number }[],
): number | null {
  const sold = new Map<number, number>();
  for (const { price, sold: pieces } of goods) sold.set(price, (sold.get(price) ?? 0) + pieces);
  const [first] = [...sold].sort(([price, pieces], [other, more]) => more - pieces || price - other);
  return first === undefined ? null : first[0];
}

// Helpers

/** Who would have bought one buys more; who would have bought all gets them for less. */
function shareThatMay(gain: number, loss: number): number {
  if (gain <= 0) return loss < 0 ? 1 : 0;
  return loss <= 0 ? 1 : gain / (gain + loss);
}

function meanOf(goods: readonly InSet[], figure: (one: InSet) => number): number {
  const sold = goods.reduce((sum, one) => sum + one.sold, 0);
  return sold > 0
    ? goods.reduce((sum, one) => sum + one.sold * figure(one), 0) / sold
    : goods.reduce((sum, one) => sum + figure(one), 0) / goods.length;
}

/** What is kept is in line with the price, so two points of it give the price that keeps what the pieces take. */
function floorOf(pieces: number, goods: readonly InSet[], takes: number): number | null {
  const at = (price: number) => pieces * meanOf(goods, (one) => one.keptOf(price / pieces));
  const slope = at(1) - at(0);
  return slope > 0 ? (takes - at(0)) / slope : null;
}
