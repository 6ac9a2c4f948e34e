import type { RunFacts, StandardPaper } from '@/lib/making/runFacts';
import type { SupplyItem } from '@/shared/schemas/making/supply';
import type { GoodsIn } from '@/shared/schemas/making/supplyEvents';
import { newestPrices } from './pricesPaid';
import type { RunResult } from './runResult';

/** What was noted after a run was closed and moves what it came to. */
export interface SinceClosed {
  /** Whose prices it takes. */
  readonly deliveries: number;
  /** Kinds of use or money that were typed, each once: the newest of each counts. */
  readonly amounts: number;
}

/**
 * @param goodsIn in force, in the store's one order
 * @returns both 0 of a run that is not closed
 */
export function sinceClosed(
  { steps, isClosed, actuals }: Pick<RunFacts, 'steps' | 'isClosed' | 'actuals'>,
  { body: { works, currency } }: Pick<StandardPaper, 'body'>,
  { actuals: { blanks, sheets } }: Pick<RunResult, 'actuals'>,
  goodsIn: readonly { readonly at: number; readonly body: GoodsIn }[],
): SinceClosed {
  const closed = steps.findLast(({ body }) => body.step.what === 'closed');
  if (!isClosed || closed === undefined) return { deliveries: 0, amounts: 0 };
  const isLater = ({ at }: { readonly at: number }) => at > closed.at;
  const lines = works.flatMap((work) => work.lines);
  const isOfRun = (item: SupplyItem): boolean =>
    item.kind === 'blank'
      ? blanks.eachFrom === 'goodsIn' &&
        lines.some(
          ({ blankId, sizes }) => blankId === item.blankId && sizes.some(({ size }) => size === item.size),
        )
      : item.kind === 'paper' &&
        sheets.eachFrom === 'goodsIn' &&
        works.some((work) => work.sheets.sheetId === item.sheetId);
  const bodies = goodsIn.map(({ body }) => body);
  const told = new Set(
    newestPrices(bodies, currency, closed.body.day)
      .filter(({ item }) => isOfRun(item))
      .map(({ by }) => by),
  );
  return {
    deliveries: goodsIn.filter((entry) => isLater(entry) && told.has(entry.body)).length,
    amounts: new Set(actuals.filter(isLater).map(({ body }) => body.actual.of)).size,
  };
}
