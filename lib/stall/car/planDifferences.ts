import { goodsKey } from '@/lib/stall/goodsKey';
import { canonicalText } from '@/lib/stored/canonicalText';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { PlannedGoods, StallPlan } from '@/shared/schemas/stallPapers';

/** What a later plan says otherwise than the one before it. */
export interface PlanDifferences {
  readonly bring: readonly (StallGoods & {
    readonly design: string;
    readonly before: number;
    readonly now: number;
  })[];
  /** Whole minor units. */
  readonly prices: readonly (StallGoods & {
    readonly design: string;
    readonly before: number;
    readonly now: number;
  })[];
  /** Pieces in all. */
  readonly pieces: { readonly before: number; readonly now: number };
  /** What a second costs, share of the price of the hour; null where it has no price. Null where both say the same. */
  readonly secondsShare: { readonly before: number | null; readonly now: number | null } | null;
  /** Weathers by which the day is counted and held against the plan: their names, parts and chances. */
  readonly isOtherWeather: boolean;
  /** What goods of both plans cost to make and pack, or keep of it unsold. */
  readonly isOtherCost: boolean;
  /** Something else than all of these: sets, days, the last hour, the float, fees or costs of the day. */
  readonly isOtherwise: boolean;
}

type Told = Omit<StallPlan, 'number' | 'issuedOn'>;

/** @returns null where both say the same of everything that the count and the evening rest on. */
export function planDifferences(before: Told, now: Told): PlanDifferences | null {
  const all = new Map([...before.goods, ...now.goods].map((goods) => [goodsKey(goods), goods] as const));
  const was = byKey(before.goods);
  const is = byKey(now.goods);
  const changes = (figure: (goods: PlannedGoods) => number) =>
    [...all].flatMap(([key, { jobId, lineId, size, design }]) => {
      const [old, fresh] = [was.get(key), is.get(key)].map((goods) =>
        goods === undefined ? null : figure(goods),
      );
      return old === fresh ? [] : [{ jobId, lineId, size, design, before: old ?? 0, now: fresh ?? 0 }];
    });
  const bring = changes((goods) => goods.bring);
  const prices = changes((goods) => goods.price).filter(
    (row) => was.has(goodsKey(row)) && is.has(goodsKey(row)),
  );
  const isOfOtherCost = before.goods.some((old) => {
    const fresh = is.get(goodsKey(old));
    return fresh !== undefined && isOtherCost(old, fresh);
  });
  const isOtherBatch = bring.length === 0 && !isOfOtherCost && batchOf(before) !== batchOf(now);
  const others = {
    secondsShare: secondsOf(before, now),
    isOtherWeather: canonicalText(before.weathers) !== canonicalText(now.weathers),
    isOtherCost: isOfOtherCost,
    isOtherwise: isOtherBatch || restOf(before, is) !== restOf(now, was),
  };
  const isSame = bring.length === 0 && prices.length === 0 && Object.values(others).every((one) => !one);
  return isSame
    ? null
    : { bring, prices, pieces: { before: piecesOf(before), now: piecesOf(now) }, ...others };
}

/** @returns pieces that a plan brings. */
export const piecesOf = ({ goods }: Pick<StallPlan, 'goods'>): number =>
  goods.reduce((sum, { bring }) => sum + bring, 0);

// Helpers

const byKey = (goods: readonly PlannedGoods[]) => new Map(goods.map((one) => [goodsKey(one), one] as const));

function secondsOf(one: Told, other: Told): PlanDifferences['secondsShare'] {
  const [before, now] = [one.secondsShare ?? null, other.secondsShare ?? null];
  return before === now ? null : { before, now };
}

/** Of how many come from home nothing is told where their number is another one anyhow. */
const isOtherCost = (old: PlannedGoods, fresh: PlannedGoods): boolean =>
  costsOf(old) !== costsOf(fresh) || (old.bring === fresh.bring && old.fromHome !== fresh.fromHome);

/** To nine digits: what differs behind them comes of the order of sums. */
const costsOf = ({ cost, packaging, leftoverShare }: PlannedGoods): string =>
  [cost, packaging, leftoverShare].map((figure) => figure?.toPrecision(9) ?? 'unknown').join(' ');

/** What making costs once and at the bench follows the pieces, and is a difference by itself only where they are the same. */
const batchOf = ({ costs: { batch, benchHours } }: Told): string =>
  [batch, benchHours].map((figure) => figure.toPrecision(9)).join(' ');

/**
 * What a plan expects comes of all the rest and is no difference by itself.
 *
 * @param other goods of the other plan: of those that only one brings all is told by how many come along
 */
function restOf(plan: Told, other: ReadonlyMap<string, PlannedGoods>): string {
  const { title, place, days, currency, ranges, sets, lastHourFrom, float, goods } = plan;
  const { taxMode, tax, taxRounding, cardFee, cardFixedFee, cardShare } = plan;
  const { commission, commissionBase, piecesPerTicket } = plan;
  const { batch: _, benchHours: __, ...costs } = plan.costs;
  return canonicalText([
    [title, place, days, currency, ranges, sets, lastHourFrom, float, costs],
    [taxMode, tax, taxRounding, cardFee, cardFixedFee, cardShare],
    [commission, commissionBase, piecesPerTicket],
    goods.flatMap((one) => {
      const key = goodsKey(one);
      return other.has(key) ? [[key, one.lastHourPrice, one.seconds ?? 0]] : [];
    }),
  ]);
}
