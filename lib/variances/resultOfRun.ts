import type { RunFacts } from '@/lib/making/runFacts';
import type { Hours } from '@/shared/schemas/making/runEvents';
import type { GoodsIn } from '@/shared/schemas/making/supplyEvents';
import { paidForRun } from './pricesPaid';
import { type RunResult, runResult } from './runResult';

/**
 * @param goodsIn all that came in
 * @param hours of everything
 * @returns a run held against its standard, with what was paid for it and the hours of its orders; null where it was begun without one
 */
export function resultOfRun(
  facts: RunFacts,
  goodsIn: readonly { readonly body: GoodsIn }[],
  hours: readonly { readonly body: Hours }[],
): RunResult | null {
  const { standard, run } = facts;
  if (standard === null) return null;
  const orders = new Set(run.works.map(({ orderId }) => orderId));
  const orderHours = hours
    .map(({ body }) => body)
    .filter((one) => one.for.kind === 'order' && orders.has(one.for.id));
  const deliveries = goodsIn.map(({ body }) => body);
  return runResult(standard, {
    ...{ facts, orderHours },
    paid: paidForRun(deliveries, standard.body.currency, facts),
  });
}
