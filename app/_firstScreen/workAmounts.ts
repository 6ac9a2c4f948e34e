import { type BarAmounts, barAmounts } from '@/app/_docket/head/barAmounts';
import { priceJob } from '@/lib/costing/priceJob';
import { clubEventDay } from '@/lib/examples/clubEventDay';
import { clubOrder } from '@/lib/examples/clubOrder';
import { exampleAt } from '@/lib/examples/exampleAt';
import { type Region, regionOf } from '@/lib/examples/regionOf';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { letterRegions, regionCurrencies } from '@/shared/tables/regions';
import { amountsKey } from './amountsKey';

/** Languages of every place the example is made for, and of one nobody has thought of. */
export const everyPlace: readonly string[] = [...regionCurrencies.keys(), ...letterRegions, 'AQ'].map(
  (region) => `en-${region}`,
);

/** The sums of the example do not depend on the day; it only has to be a day. */
const ANY_DAY = '2026-11-26';

/**
 * Prices the example of a place as the docket does.
 *
 * @param day the day of the visit
 */
export function exampleAmounts(region: Region, grid: Grid, day = ANY_DAY): BarAmounts {
  const input = exampleAt(clubOrder(day, clubEventDay(day)), region);
  const amounts = barAmounts(priceJob(input, grid), input.job.lines[0]?.id ?? '');
  if (amounts === null) throw new RangeError(`the example has no price for ${amountsKey(region)}`);
  return amounts;
}

/** What stands in `exampleAmounts.json`: each place's figures once. */
export function everyAmounts(grid: Grid): Readonly<Record<string, BarAmounts>> {
  const regions = new Map(everyPlace.map(regionOf).map((region) => [amountsKey(region), region]));
  return Object.fromEntries([...regions].map(([key, region]) => [key, exampleAmounts(region, grid)]));
}
