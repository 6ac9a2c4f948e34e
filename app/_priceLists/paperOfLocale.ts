import type { PriceList } from '@/shared/schemas/priceList';
import { letterRegions } from '@/shared/tables/regions';

/** @returns the paper that lies in a maker's printer, as far as the locale says. */
export function paperOfLocale(locale: string): PriceList['paper'] {
  const region = /[-_]([A-Za-z]{2})\b/.exec(locale)?.[1]?.toUpperCase();
  return region !== undefined && letterRegions.includes(region) ? 'letter' : 'a4';
}
