import { designKey } from '@/lib/stall/plan/demand/pastWanted';
import type { GoodsReckoned } from './goodsReckoned';

/** What pieces take of each limit, and what there is of it. */
export interface Room {
  readonly pieces: number;
  /** Currency units for materials and packaging. */
  readonly cash: number;
}

/** Some pieces: what they earn in the mean, and what they take. */
export interface Bundle {
  /** Places of their goods; one stands as often as there are pieces of it. */
  readonly goods: readonly number[];
  readonly worth: number;
  readonly takes: Room;
}

/** Pieces of a design, those of one goods in the order they are brought. */
export interface LimitedDesign {
  /** Without these it does not come along. */
  readonly least: readonly Bundle[];
  readonly others: readonly Bundle[];
}

/** Sizes that whoever stops at a table looks for first: a design comes with them or not at all. */
const leastSizes: readonly string[] = ['M', 'L', 'XL'];

/** @param wanted pieces without limits, by the order of the goods; of a design that has none nothing is brought */
export function limitedPieces(
  goods: readonly GoodsReckoned[],
  wanted: readonly number[],
): readonly LimitedDesign[] {
  const places = new Map<string, number[]>();
  for (const [at, each] of goods.entries()) {
    const key = designKey(each);
    places.set(key, [...(places.get(key) ?? []), at]);
  }
  return [...places.values()]
    .filter((of) => of.some((at) => (wanted[at] ?? 0) > 0))
    .map((of) => {
      const pieces = of.map((at) => piecesOf(goods, wanted, at));
      return { least: pieces.flatMap(({ least }) => least), others: pieces.flatMap(({ others }) => others) };
    });
}

/** @returns several bundles as one. */
export const bundled = (bundles: readonly Bundle[]): Bundle => ({
  goods: bundles.flatMap(({ goods }) => goods),
  worth: bundles.reduce((sum, { worth }) => sum + worth, 0),
  takes: {
    pieces: bundles.reduce((sum, { takes }) => sum + takes.pieces, 0),
    cash: bundles.reduce((sum, { takes }) => sum + takes.cash, 0),
  },
});

// Helpers

/** One is made of a middle size even where the rule asks for none. */
function piecesOf(goods: readonly GoodsReckoned[], wanted: readonly number[], at: number): LimitedDesign {
  const each = goods[at];
  if (each === undefined) return { least: [], others: [] };
  const isLeast = leastSizes.includes(each.size) && each.expected > 0;
  const count = Math.max(wanted[at] ?? 0, isLeast ? 1 : 0);
  const all = Array.from({ length: count }, (_, index): Bundle => {
    const isPressed = index >= each.atHome;
    const cash = each.packaging + (isPressed ? each.cash : 0);
    return { goods: [at], worth: worthOf(each, index + 1, isPressed), takes: { pieces: 1, cash } };
  });
  return isLeast ? { least: all.slice(0, 1), others: all.slice(1) } : { least: [], others: all };
}

/** A finished piece is kept or sold: what it cost is spent either way. */
function worthOf({ demand, underage, overage }: GoodsReckoned, piece: number, isPressed: boolean): number {
  const wanted = 1 - demand.chanceUpTo(piece - 1);
  return wanted * (underage + overage) - (isPressed ? overage : 0);
}
