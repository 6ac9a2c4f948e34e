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
 * What earns its price, design by design; one whose least pieces do not pay comes with what lies finished alone, or stays
 * at home whole. No other choice earns more over these prices. Where room has none a design that pays comes whole.
 *
 * @param price of a piece's place and of a unit of money, in currency units
 * @param count of all goods
 */
export function pricedChoice(designs: readonly LimitedDesign[], price: Room, count: number): Choice {
  const bring = Array.from({ length: count }, () => 0);
  let [worth, pieces, cash] = [0, 0, 0];
  const isPriced = price.pieces > 0 || price.cash > 0;
  for (const design of designs) {
    const paid = design.map((goods) => paidPieces(goods, price));
    const earning = (of: (goods: LimitedGoods, paid: number) => number) => {
      const count = design.map((goods, at) => of(goods, paid[at] ?? 0));
      const own = sumOf(design, (at) => count[at] ?? 0);
      return {
        count,
        ...own,
        over: own.worth - price.pieces * own.takes.pieces - price.cash * own.takes.cash,
      };
    };
    const whole = earning(({ least }, pieces) => Math.max(least, pieces));
    const isShort = (isPriced || whole.over <= 0) && design.some(({ least }, at) => (paid[at] ?? 0) < least);
    const alone =
      isShort && hasFinished(design) ? earning(({ finished }, pieces) => Math.min(finished, pieces)) : whole;
    const own = alone.over > whole.over ? alone : whole;
    if (own.over <= 0) continue;
    for (const [at, goods] of design.entries()) bring[goods.at] = own.count[at] ?? 0;
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

/** What may come next of a design: one more of its goods; while its least are not along these together, or a finished one. */
export function nextMoves(design: LimitedDesign, bring: readonly number[]): readonly Move[] {
  const missing = design.filter((goods) => goods.least > (bring[goods.at] ?? 0));
  const more = (of: LimitedDesign) =>
    of.flatMap((goods) => {
      const piece = (bring[goods.at] ?? 0) + 1;
      return piece > goods.most ? [] : [onePiece(goods, piece, 1)];
    });
  if (missing.length === 0) return more(design);
  const { worth, takes } = sumOf(missing, () => 1);
  const least = { goods: missing, pieces: missing.map(() => 1), worth, takes };
  const finished = hasFinished(design) ? design.map((goods) => ({ ...goods, most: goods.finished })) : [];
  return [least, ...more(finished)];
}

/** What may be taken out of a choice: the last piece of some goods of a design, what is pressed of it, or all of it. */
export function lessMoves(design: LimitedDesign, bring: readonly number[]): readonly Move[] {
  const brought = (goods: LimitedGoods) => bring[goods.at] ?? 0;
  const isPressed = design.some((goods) => brought(goods) > goods.finished);
  const last = design
    .filter((goods) => brought(goods) > (isPressed ? goods.least : 0))
    .map((goods) => onePiece(goods, brought(goods), -1));
  const all = downTo(design, brought, () => 0);
  const pressed =
    isPressed && hasFinished(design) ? [downTo(design, brought, ({ finished }) => finished)] : [];
  return all.takes.pieces < -1 ? [...last, ...pressed, all] : last;
}

// Helpers

const hasFinished = (design: LimitedDesign): boolean => design.some(({ finished }) => finished > 0);

/** Takes out of a design what is beyond so many of each goods. */
function downTo(
  design: LimitedDesign,
  brought: (goods: LimitedGoods) => number,
  most: (goods: LimitedGoods) => number,
): Move {
  const before = sumOf(design, (_, goods) => brought(goods));
  const after = sumOf(design, (_, goods) => Math.min(brought(goods), most(goods)));
  return {
    goods: design,
    pieces: design.map((goods) => Math.min(0, most(goods) - brought(goods))),
    worth: after.worth - before.worth,
    takes: {
      pieces: after.takes.pieces - before.takes.pieces,
      cash: after.takes.cash - before.takes.cash,
    },
  };
}

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
