import { goodsKey } from '@/lib/stall/count/goodsKey';
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
  /** Something else than numbers and prices: sets, days, the last hour, the float, fees or costs. */
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
  const isOtherwise = restOf(before) !== restOf(now);
  return bring.length === 0 && prices.length === 0 && !isOtherwise
    ? null
    : { bring, prices, pieces: { before: piecesOf(before), now: piecesOf(now) }, isOtherwise };
}

/** @returns pieces that a plan brings. */
export const piecesOf = ({ goods }: Pick<StallPlan, 'goods'>): number =>
  goods.reduce((sum, { bring }) => sum + bring, 0);

// Helpers

const byKey = (goods: readonly PlannedGoods[]) => new Map(goods.map((one) => [goodsKey(one), one] as const));

/** What a plan expects follows the weather report and is no difference to whoever loads the car. */
function restOf(plan: Told): string {
  const { title, place, days, currency, ranges, sets, lastHourFrom, float, costs, goods } = plan;
  const { taxMode, tax, taxRounding, cardFee, cardFixedFee, cardShare } = plan;
  const { commission, commissionBase, piecesPerTicket } = plan;
  return canonicalText([
    [title, place, days, currency, ranges, sets, lastHourFrom, float, costs],
    [taxMode, tax, taxRounding, cardFee, cardFixedFee, cardShare],
    [commission, commissionBase, piecesPerTicket],
    goods.map((one) => [goodsKey(one), one.lastHourPrice]),
  ]);
}
