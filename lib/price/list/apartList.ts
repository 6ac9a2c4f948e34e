import type { ResolvedJob } from '@/lib/job/checkedJob';
import { type MinorUnits, toPriceEnding } from '@/shared/money';
import { currencyDigits } from '@/shared/tables/currencies';
import type { LineNeeds } from './lineNeeds';
import type { OrderRange } from './listFigures';
import type { WrittenTariff } from './selling';
import { setUpApart } from './setUpApart';

/** Every order up to this one reaches its target, whatever breaks are judged to. */
const COVERED_TO = 300;

/** @returns what the base size of a line would be written at with its set-up apart. */
export function apartList(
  { workshop }: ResolvedJob,
  { judged }: LineNeeds,
  orders: OrderRange,
): WrittenTariff {
  const { currency, policy } = workshop;
  const found = setUpApart({
    need: judged.written,
    from: orders.from,
    judgedTo: orders.to,
    coveredTo: Math.max(COVERED_TO, orders.to),
    lifted: (amount) => toPriceEnding(amount, policy.priceStep, currency),
    step: policy.priceStep,
    unit: 10 ** -(currencyDigits(currency) ?? 2),
  });
  return { currency, start: found.start as MinorUnits, each: found.each as MinorUnits };
}
