import { type Region, usualSheet } from '@/lib/examples/regionOf';

/** What of a place the example's figures depend on; places that share it share their figures. */
export const amountsKey = (region: Region): string =>
  [
    region.currency,
    region.units.length,
    region.units.temperature,
    region.units.distance,
    usualSheet(region).name,
  ].join(' ');
