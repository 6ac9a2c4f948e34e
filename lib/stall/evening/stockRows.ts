import type { DayCount, GoodsCount } from '@/lib/stall/count/dayCount';
import type { SellingStretch } from '@/lib/stall/count/sellingStretches';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallPay } from '@/shared/schemas/stallEvents';
import type { PlannedGoods, StallPlan } from '@/shared/schemas/stallPapers';
import type { EveningAnswers, StockReason } from './eveningAnswers';

/** What became of some goods, pieces. Sold less kept seconds among it, given, spoiled, left and missing together are brought and found. */
export interface StockRow {
  readonly key: string;
  readonly goods: PlannedGoods;
  readonly brought: number;
  readonly sold: number;
  readonly given: number;
  readonly damaged: number;
  /** Of the damaged, kept to sell for less. */
  readonly seconds: number;
  /** Seconds kept from before that came along, beside `brought`, and of the sold those that were of them. */
  readonly keptBrought: number;
  readonly keptSold: number;
  /** What should be left by all that was noted; below 0 where more was noted than was brought. Null where only a count can tell. */
  readonly reckoned: number | null;
  readonly counted: number | null;
  /** Lies there now: as counted, else as reckoned and never below 0. Null where nobody knows. */
  readonly left: number | null;
  /**
   * Counted less reckoned; null where one of them is not known. Where only a count can tell, what it finds beyond all that
   * was brought, else null.
   */
  readonly difference: number | null;
  /** Of that difference; null where it was said of another one. */
  readonly reason: StockReason | null;
  /** What nothing accounts for. */
  readonly missing: number;
  /** There or gone, and never brought: nobody said where it is from. */
  readonly found: number;
  /** Sold by what the count told and not by taps; below 0 tapped once too often. */
  readonly untapped: number;
  /** What each of them cost: as in the hour of the last one that was tapped, else as the plan has it; whole minor units. */
  readonly untappedEachMinor: number;
  /** How these were paid; cash where nobody said. */
  readonly untappedPay: StallPay;
  readonly asked: number;
  readonly revenueMinor: number;
  /** As tapped; none where the count alone says what was sold. */
  readonly stretches: readonly SellingStretch[];
}

/** Whether sales were tapped, or what was sold is what did not come home. */
export const soldFromOf = ({ tickets }: Pick<DayCount, 'tickets'>): 'taps' | 'count' =>
  tickets.length > 0 ? 'taps' : 'count';

/**
 * What became of all goods of a plan, with what the maker counted and said of it.
 *
 * @param beside goods that were tapped and that an earlier plan names, of `besidePlan`; they stand last
 */
export function stockRows(
  plan: StallPlan,
  count: DayCount,
  { stock }: Pick<EveningAnswers, 'stock'>,
  beside: readonly PlannedGoods[] = [],
): readonly StockRow[] {
  const counts = new Map(count.goods.map((goods) => [goodsKey(goods), goods]));
  const isTapped = soldFromOf(count) === 'taps';
  const planned = plan.goods.map((goods) => {
    const key = goodsKey(goods);
    const tapped = counts.get(key) ?? untouched(goods);
    return isTapped ? tappedRow(key, goods, tapped, stock) : countedRow(key, goods, tapped, stock);
  });
  const others = beside.map((goods) => {
    const key = goodsKey(goods);
    return besideRow(key, goods, counts.get(key) ?? untouched({ ...goods, bring: 0 }), stock);
  });
  return [...planned, ...others];
}

/** Why a count that finds more or fewer may differ from what was noted. */
export function reasonsFor({
  difference,
  reckoned,
  sold,
  untapped,
}: Pick<StockRow, 'difference' | 'reckoned' | 'sold' | 'untapped'>): readonly StockReason[] {
  if (difference === null || difference === 0) return [];
  if (difference < 0) return ['damaged', 'given', 'soldNotTapped', 'notKnown'];
  const isTapped = reckoned !== null && sold - untapped > 0;
  return isTapped ? ['tappedTwice', 'refillNotTapped', 'notKnown'] : ['refillNotTapped', 'notKnown'];
}

/** @returns how many should be left, by all that is known: never fewer than none */
export const shouldBeLeft = ({
  reckoned,
  left,
  found,
}: Pick<StockRow, 'reckoned' | 'left' | 'found'>): number => Math.max(0, reckoned ?? (left ?? 0) - found);

/** @returns how many lie there of those that were brought: what was found is worth nothing before somebody says where from */
export const leftOfBrought = ({ left, found }: Pick<StockRow, 'left' | 'found'>): number =>
  Math.max(0, (left ?? 0) - found);

// Helpers

type Stock = EveningAnswers['stock'];

function tappedRow(key: string, goods: PlannedGoods, tapped: GoodsCount, stock: Stock): StockRow {
  const { brought, sold, given, damaged, seconds, keptBrought, keptSold } = tapped;
  const reckoned = brought - (sold - keptSold) - given - damaged;
  const { counted, difference, reason, pay } = countedOf(key, stock, reckoned);
  const by = explained(difference ?? 0, reason, sold);
  const left = counted ?? Math.max(0, reckoned);
  const untappedEachMinor = tapped.lastPriceMinor ?? goods.price;
  const rest = reckoned + by.brought - by.untapped - by.given - by.damaged - left;
  return {
    ...{ key, goods, seconds, keptBrought, keptSold, reckoned, counted, difference, reason, left },
    brought: brought + by.brought,
    sold: sold + by.untapped,
    given: given + by.given,
    damaged: damaged + by.damaged,
    ...missingOrFound(rest),
    untapped: by.untapped,
    untappedEachMinor,
    untappedPay: pay,
    asked: tapped.asked,
    revenueMinor: tapped.revenueMinor + by.untapped * untappedEachMinor,
    stretches: tapped.stretches,
  };
}

/**
 * What went of goods that the plan does not name was there: so many were brought as went, and nobody is asked to count
 * what is not on the table. They were taken off it and did not sell out, so that no moment tells of a pace.
 */
function besideRow(key: string, goods: PlannedGoods, tapped: GoodsCount, stock: Stock): StockRow {
  const gone = tapped.sold + tapped.given + tapped.damaged;
  const there = { ...tapped, brought: Math.max(tapped.brought, gone), stretches: [] };
  const isAllGone = there.brought === gone;
  const counted = isAllGone
    ? { [key]: { pieces: 0, reason: null, reasonFor: null }, ...stock.counted }
    : stock.counted;
  return tappedRow(key, goods, there, { ...stock, counted });
}

/** What did not come home and was neither given nor spoiled was sold, at the price of the plan. */
function countedRow(key: string, goods: PlannedGoods, tapped: GoodsCount, stock: Stock): StockRow {
  const { brought, given, damaged, seconds, keptBrought, asked } = tapped;
  const most = brought - given - damaged;
  const { counted, difference, reason } = countedOf(key, { ...stock, isRestAsReckoned: false }, most);
  const beyond = Math.max(0, difference ?? 0);
  const sold = Math.max(0, -(difference ?? 0));
  const { brought: more } = explained(beyond, beyond === 0 ? null : reason, 0);
  return {
    ...{ key, goods, given, damaged, seconds, asked, sold, counted, keptBrought, keptSold: 0 },
    brought: brought + more,
    reckoned: null,
    ...(beyond === 0 ? { difference: null, reason: null } : { difference: beyond, reason }),
    left: counted,
    ...missingOrFound(more - beyond),
    untapped: sold,
    untappedEachMinor: goods.price,
    untappedPay: 'cash',
    revenueMinor: sold * goods.price,
    stretches: [],
  };
}

function countedOf(key: string, { counted, isRestAsReckoned }: Stock, reckoned: number) {
  const own = counted[key];
  const pieces = own?.pieces ?? (isRestAsReckoned ? Math.max(0, reckoned) : null);
  const difference = pieces === null ? null : pieces - reckoned;
  const isOfThis = own !== undefined && difference !== 0 && own.reasonFor === difference;
  return { counted: pieces, difference, reason: isOfThis ? own.reason : null, pay: own?.pay ?? 'cash' };
}

/** What a reason makes of a difference. */
function explained(difference: number, reason: StockReason | null, sold: number) {
  const short = Math.max(0, -difference);
  const over = Math.min(Math.max(0, difference), sold);
  return {
    untapped: reason === 'soldNotTapped' ? short : reason === 'tappedTwice' ? -over : 0,
    given: reason === 'given' ? short : 0,
    damaged: reason === 'damaged' ? short : 0,
    brought: reason === 'refillNotTapped' ? Math.max(0, difference) : 0,
  };
}

/** @param rest brought less all that became of it */
const missingOrFound = (rest: number): Pick<StockRow, 'missing' | 'found'> => ({
  missing: Math.max(0, rest),
  found: Math.max(0, -rest),
});

const untouched = ({ jobId, lineId, size, bring, seconds: keptBrought = 0 }: PlannedGoods): GoodsCount => ({
  ...{ jobId, lineId, size, brought: bring, left: bring, keptBrought },
  ...{
    sold: 0,
    given: 0,
    damaged: 0,
    seconds: 0,
    secondsSold: 0,
    keptSold: 0,
    asked: 0,
    putBack: 0,
    revenueMinor: 0,
    lastSoldAt: null,
    lastPriceMinor: null,
    stretches: [],
  },
});
