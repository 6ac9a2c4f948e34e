import type { LimitedDesign, LimitedGoods, Room } from './limitedDesigns';

/** How many of each goods, what they earn and take together. */
export interface Choice {
  /** By the order of the goods. */
  readonly bring: readonly number[];
  readonly worth: number;
  readonly takes: Room;
}

const NOISE = 1e-9;

/** @returns whether a choice does with the room. */
export const fits = ({ takes }: Pick<Choice, 'takes'>, room: Room): boolean =>
  takes.pieces <= room.pieces + NOISE && takes.cash <= room.cash + NOISE;

/**
 * What earns its price, design by design; one whose least pieces do not pay stays at home whole. No other choice earns
 * more over these prices.
 *
 * @param price of a piece's place and of a unit of money, in currency units
 * @param count of all goods
 */
export function pricedChoice(designs: readonly LimitedDesign[], price: Room, count: number): Choice {
  const bring = Array.from({ length: count }, () => 0);
  let [worth, pieces, cash] = [0, 0, 0];
  for (const design of designs) {
    const paid = design.map((goods) => Math.max(goods.least, paidPieces(goods, price)));
    const own = sumOf(design, (at) => paid[at] ?? 0);
    if (own.worth - price.pieces * own.takes.pieces - price.cash * own.takes.cash <= 0) continue;
    for (const [at, goods] of design.entries()) bring[goods.at] = paid[at] ?? 0;
    worth += own.worth;
    pieces += own.takes.pieces;
    cash += own.takes.cash;
  }
  return { bring, worth, takes: { pieces, cash } };
}

/** Worth and room of some pieces that are added or taken away as one. */
export interface Move {
  readonly goods: readonly LimitedGoods[];
  /** Of each of these goods; below 0 they are taken away. */
  readonly pieces: readonly number[];
  readonly worth: number;
  readonly takes: Room;
}

/** @returns a choice after a move. */
export function moved({ bring, worth, takes }: Choice, move: Move): Choice {
  const next = [...bring];
  for (const [at, goods] of move.goods.entries())
    next[goods.at] = (next[goods.at] ?? 0) + (move.pieces[at] ?? 0);
  return {
    bring: next,
    worth: worth + move.worth,
    takes: { pieces: takes.pieces + move.takes.pieces, cash: takes.cash + move.takes.cash },
  };
}

/** What may come next of a design: one more of goods that come along, or the least of one that does not yet. */
export function nextMoves(design: LimitedDesign, bring: readonly number[]): readonly Move[] {
  const isAlong = design.some(({ at }) => (bring[at] ?? 0) > 0);
  const least = design.filter((goods) => goods.least > 0);
  if (!isAlong && least.length > 0) {
    const { worth, takes } = sumOf(least, () => 1);
    return [{ goods: least, pieces: least.map(() => 1), worth, takes }];
  }
  return design.flatMap((goods) => {
    const piece = (bring[goods.at] ?? 0) + 1;
    return piece > goods.most ? [] : [onePiece(goods, piece, 1)];
  });
}

/** What may be taken out of a choice: the last piece of some goods of a design, or all of it. */
export function lessMoves(design: LimitedDesign, bring: readonly number[]): readonly Move[] {
  const brought = (goods: LimitedGoods) => bring[goods.at] ?? 0;
  const last = design
    .filter((goods) => brought(goods) > goods.least)
    .map((goods) => onePiece(goods, brought(goods), -1));
  const { worth, takes } = sumOf(design, (_, goods) => brought(goods));
  const all = {
    goods: design,
    pieces: design.map((goods) => -brought(goods)),
    worth: -worth,
    takes: { pieces: -takes.pieces, cash: -takes.cash },
  };
  return takes.pieces > 1 ? [...last, all] : last;
}

// Helpers

/** How many pieces earn their price; each further one earns no more than the last and takes no less. */
function paidPieces({ most, worthOf, cashOf }: LimitedGoods, price: Room): number {
  const isPaid = (piece: number) =>
    worthOf(piece) - price.pieces - (price.cash === 0 ? 0 : price.cash * cashOf(piece)) > -NOISE;
  if (most === 0 || !isPaid(1)) return 0;
  let [paid, unpaid] = [1, most + 1];
  while (unpaid - paid > 1) {
    const middle = Math.floor((paid + unpaid) / 2);
    if (isPaid(middle)) paid = middle;
    else unpaid = middle;
  }
  return paid;
}

function sumOf(design: LimitedDesign, of: (at: number, goods: LimitedGoods) => number) {
  let [worth, pieces, cash] = [0, 0, 0];
  for (const [at, goods] of design.entries()) {
    const count = of(at, goods);
    worth += goods.worthOfAll(count);
    pieces += count;
    cash += goods.cashOfAll(count);
  }
  return { worth, takes: { pieces, cash } };
}

const onePiece = (goods: LimitedGoods, piece: number, sign: 1 | -1): Move => ({
  goods: [goods],
  pieces: [sign],
  worth: sign * goods.worthOf(piece),
  takes: { pieces: sign, cash: sign * goods.cashOf(piece) },
});
