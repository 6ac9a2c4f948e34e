import { LOOKED_AT_UP_TO } from '@/lib/price/list/firstFall';
import type { TablePrice } from '@/lib/price/priceTable';
import type { SellingRule } from '@/shared/schemas/sellingRule';

interface LookedBreak {
  readonly from: number;
  readonly to: number | null;
  readonly rule: SellingRule;
}

/**
 * By slabs and with set-up apart a piece earns less the more are bought, so that an open break is looked at far on. One
 * price is that of the batch it is made in.
 *
 * @returns the quantities of a break at which a price may earn least: its ends, and those its sizes are priced at
 */
export function lookedAt({ from, to, rule }: LookedBreak, table: readonly TablePrice[]): readonly number[] {
  const priced = table.map(({ pricedAt }) => pricedAt);
  if (rule === 'onePrice') return priced;
  const last = to ?? LOOKED_AT_UP_TO;
  return [from, last, ...priced.filter((at) => at >= from && at <= last)];
}
