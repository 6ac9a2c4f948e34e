import type { GoodsReckoned } from './goodsReckoned';
import { designKey } from './pastWanted';

/** What must do for all pieces; null where nothing does. */
export interface BringLimits {
  readonly tablePieces: number | null;
  /** Currency units for materials and packaging, what the day and its batch take set aside. */
  readonly cash: number | null;
}

export interface Limited {
  /** By the order of the goods. */
  readonly bring: readonly number[];
  /** Which limit trims it; null where none does. */
  readonly trimmedFor: 'tablePieces' | 'cash' | null;
  /** At most what a better choice within the limits could earn more, currency units; 0 where there is none. */
  readonly gap: number;
}

/** Sizes that whoever stops at a table looks for first: a design comes with them or not at all. */
const leastSizes: readonly string[] = ['M', 'L', 'XL'];
const NOISE = 1e-9;
const HALVINGS = 60;

/** One piece more of some goods: what it earns in the mean, and what it takes of a limit. */
interface Piece {
  readonly goods: number;
  readonly worth: number;
  readonly takes: number;
}

/** Pieces of a design: those without which it does not come along, and the others. */
interface Design {
  readonly least: readonly Piece[];
  readonly others: readonly Piece[];
}

interface Choice {
  readonly bring: readonly number[];
  readonly worth: number;
  readonly takes: number;
}

type Takes = (goods: GoodsReckoned, isPressed: boolean) => number;

/**
 * Trims the worst pieces first until both limits hold.
 *
 * @param wanted pieces without limits
 */
export function withinLimits(
  goods: readonly GoodsReckoned[],
  wanted: readonly number[],
  { tablePieces, cash }: BringLimits,
): Limited {
  const free = most(designsOf(goods, wanted, nothing), 0, goods.length);
  const table = tablePieces === null ? null : ({ takes: one, most: tablePieces } as const);
  const money = cash === null ? null : ({ takes: spends, most: Math.max(0, cash) } as const);
  const isOver = (limit: typeof table | typeof money, { bring }: Choice) =>
    limit !== null && takenBy(goods, bring, limit.takes) > limit.most + NOISE;
  const isTableOver = isOver(table, free);
  const isMoneyOver = isOver(money, free);
  if (!isTableOver && !isMoneyOver) return { bring: free.bring, trimmedFor: null, gap: 0 };
  const tried = (
    [
      ['tablePieces', table],
      ['cash', money],
    ] as const
  )
    .flatMap(([limit, of]) =>
      isOver(of, free) && of !== null ? [{ limit, of, ...under(goods, wanted, of) }] : [],
    )
    .sort((a, b) => a.bound - b.bound);
  const [tight] = tried;
  if (tight === undefined) return { bring: free.bring, trimmedFor: null, gap: 0 };
  const other = tight.limit === 'cash' ? table : money;
  if (!isOver(other, tight)) return { bring: tight.bring, trimmedFor: tight.limit, gap: gapOf(tight) };
  // Both press: what keeps the first is trimmed once more for the second.
  if (other === null) return { bring: tight.bring, trimmedFor: tight.limit, gap: gapOf(tight) };
  const both = under(goods, tight.bring, other);
  return { bring: both.bring, trimmedFor: tight.limit, gap: Math.max(0, tight.bound - both.worth) };
}

// Helpers

const gapOf = ({ bound, worth }: { readonly bound: number; readonly worth: number }): number =>
  bound - worth > NOISE ? bound - worth : 0;

const nothing: Takes = () => 0;
const one: Takes = () => 1;
const spends: Takes = ({ cash, packaging }, isPressed) => packaging + (isPressed ? cash : 0);

const takenBy = (goods: readonly GoodsReckoned[], bring: readonly number[], takes: Takes): number =>
  goods.reduce((sum, each, at) => {
    const brought = bring[at] ?? 0;
    const pressed = Math.max(0, brought - each.atHome);
    return sum + pressed * takes(each, true) + (brought - pressed) * takes(each, false);
  }, 0);

/**
 * The best choice under one limit: each piece must earn a price for what it takes, and the price is raised until the
 * limit holds; what room is left is filled by the best that fits. No choice earns more than the bound.
 */
function under(
  goods: readonly GoodsReckoned[],
  wanted: readonly number[],
  limit: { readonly takes: Takes; readonly most: number },
): Choice & { readonly bound: number } {
  const designs = designsOf(goods, wanted, limit.takes);
  const at = (price: number) => most(designs, price, goods.length);
  let [low, high] = [0, 1];
  while (at(high).takes > limit.most + NOISE && high < 1e12) [low, high] = [high, high * 2];
  let bound = Number.POSITIVE_INFINITY;
  const boundAt = (price: number, { worth, takes }: Choice) => worth - price * takes + price * limit.most;
  for (let turn = 0; turn < HALVINGS; turn += 1) {
    const middle = (low + high) / 2;
    const choice = at(middle);
    bound = Math.min(bound, boundAt(middle, choice));
    if (choice.takes > limit.most + NOISE) low = middle;
    else high = middle;
  }
  const kept = at(high);
  bound = Math.min(bound, boundAt(high, kept));
  return { ...filled(designs, kept, limit.most), bound };
}

/** What earns at least its price, design by design; one whose least pieces do not pay stays at home whole. */
function most(designs: readonly Design[], price: number, count: number): Choice {
  const bring = Array.from({ length: count }, () => 0);
  let [worth, takes] = [0, 0];
  for (const { least, others } of designs) {
    const pays = others.filter((piece) => piece.worth - price * piece.takes > -NOISE);
    const pieces = [...least, ...pays];
    if (sumOf(pieces, (piece) => piece.worth - price * piece.takes) <= 0) continue;
    for (const piece of pieces) bring[piece.goods] = (bring[piece.goods] ?? 0) + 1;
    worth += sumOf(pieces, (piece) => piece.worth);
    takes += sumOf(pieces, (piece) => piece.takes);
  }
  return { bring, worth, takes };
}

/** Adds what still fits, the best for its room first: a piece of a design that comes along, or the least of another. */
function filled(designs: readonly Design[], kept: Choice, room: number): Choice {
  const bring = [...kept.bring];
  let { worth, takes } = kept;
  for (;;) {
    const next = designs
      .flatMap((design) => bundles(design, bring))
      .filter((bundle) => bundle.worth > 0 && takes + bundle.takes <= room + NOISE)
      .sort((a, b) => b.worth / (b.takes || NOISE) - a.worth / (a.takes || NOISE))[0];
    if (next === undefined) return { bring, worth, takes };
    for (const goods of next.goods) bring[goods] = (bring[goods] ?? 0) + 1;
    worth += next.worth;
    takes += next.takes;
  }
}

function bundles({ least, others }: Design, bring: readonly number[]) {
  const all = [...least, ...others];
  const isAlong = all.some(({ goods }) => (bring[goods] ?? 0) > 0);
  if (!isAlong && least.length > 0) return [bundle(least)];
  return [...new Set(all.map(({ goods }) => goods))].flatMap((goods) => {
    const next = all.filter((piece) => piece.goods === goods)[bring[goods] ?? 0];
    return next === undefined ? [] : [bundle([next])];
  });
}

const bundle = (pieces: readonly Piece[]) => ({
  goods: pieces.map(({ goods }) => goods),
  worth: sumOf(pieces, ({ worth }) => worth),
  takes: sumOf(pieces, ({ takes }) => takes),
});

const sumOf = (pieces: readonly Piece[], of: (piece: Piece) => number): number =>
  pieces.reduce((sum, piece) => sum + of(piece), 0);

function designsOf(
  goods: readonly GoodsReckoned[],
  wanted: readonly number[],
  takes: Takes,
): readonly Design[] {
  const places = new Map<string, number[]>();
  for (const [at, each] of goods.entries()) {
    const key = designKey(each);
    places.set(key, [...(places.get(key) ?? []), at]);
  }
  return [...places.values()].map((of) => {
    const pieces = of.map((at) => piecesOf(goods, wanted, at, takes));
    return { least: pieces.flatMap(({ least }) => least), others: pieces.flatMap(({ others }) => others) };
  });
}

/** One is made of a middle size even where the rule asks for none. */
function piecesOf(
  goods: readonly GoodsReckoned[],
  wanted: readonly number[],
  at: number,
  takes: Takes,
): Design {
  const each = goods[at];
  if (each === undefined) return { least: [], others: [] };
  const isLeast = leastSizes.includes(each.size) && each.expected > 0;
  const count = Math.max(wanted[at] ?? 0, isLeast ? 1 : 0);
  const all = Array.from({ length: count }, (_, index): Piece => {
    const isPressed = index >= each.atHome;
    return { goods: at, worth: worthOf(each, index + 1, isPressed), takes: takes(each, isPressed) };
  });
  return isLeast ? { least: all.slice(0, 1), others: all.slice(1) } : { least: [], others: all };
}

/** A finished piece is kept or sold: what it cost is spent either way. */
function worthOf({ demand, underage, overage }: GoodsReckoned, piece: number, isPressed: boolean): number {
  const wanted = 1 - demand.chanceUpTo(piece - 1);
  return wanted * (underage + overage) - (isPressed ? overage : 0);
}
