import type { TablePrice } from '@/lib/price/priceTable';
import { LOOKED_AT_UP_TO } from '@/lib/studies/breaks/firstFall';

/**
 * By slabs and by a tariff a piece earns less the more are bought, so that an open break is looked at far on.
 *
 * @returns the quantities of a break at which a price may earn least: its ends, and those its sizes are priced at
 */
export const lookedAt = (
  from: number,
  to: number | null,
  table: readonly TablePrice[],
): readonly number[] => [
  from,
  to ?? LOOKED_AT_UP_TO,
  ...table.flatMap(({ pricedAt }) =>
    pricedAt >= from && pricedAt <= (to ?? Number.POSITIVE_INFINITY) ? [pricedAt] : [],
  ),
];
