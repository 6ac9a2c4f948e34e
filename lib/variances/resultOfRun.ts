import type { RunFacts } from '@/lib/making/runFacts';
import type { GoodsIn } from '@/shared/schemas/making/supplyEvents';
import { paidForRun } from './pricesPaid';
import { type RunResult, runResult } from './runResult';
import type { SharedTime } from './sharedHours';

/**
 * @param goodsIn all that came in
 * @param shared hours of orders and stall days, by run
 * @returns a run held against its standard, with what was paid for it and the hours of its orders; null where it was begun without one
 */
export function resultOfRun(
  facts: RunFacts,
  goodsIn: readonly { readonly body: GoodsIn }[],
  shared: ReadonlyMap<string, readonly SharedTime[]>,
): RunResult | null {
  const { standard, runId } = facts;
  if (standard === null) return null;
  const deliveries = goodsIn.map(({ body }) => body);
  return runResult(standard, {
    ...{ facts, orderHours: shared.get(runId) ?? [] },
    paid: paidForRun(deliveries, standard.body.currency, facts),
  });
}
