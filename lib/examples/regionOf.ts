import type { Workshop } from '@/shared/schemas/workshop';
import { fahrenheitRegions, inchRegions, mileRegions, regionCurrencies } from '@/shared/tables/regions';

/** Where a workshop stands: how its numbers are written, its money and its units. */
export type Region = Pick<Workshop, 'currency' | 'locale' | 'units'>;

/**
 * A first guess at a maker's home from the language of the device.
 *
 * @param language BCP 47 tag; one that means nothing gives the guess for English in the United States
 * @example regionOf('de-AT').currency // => 'EUR'
 */
export function regionOf(language: string): Region {
  const { locale, region } = placeOf(language);
  const isInch = inchRegions.includes(region);
  return {
    locale,
    currency: regionCurrencies.get(region) ?? 'USD',
    units: {
      length: isInch ? 'in' : 'mm',
      temperature: fahrenheitRegions.includes(region) ? 'F' : 'C',
      pressure: isInch ? 'psi' : 'bar',
      volume: 'mL',
      distance: mileRegions.includes(region) ? 'mi' : 'km',
    },
  };
}

function placeOf(language: string): { readonly locale: string; readonly region: string } {
  try {
    const full = new Intl.Locale(language).maximize();
    const region = full.region ?? 'US';
    return { locale: `${full.language}-${region}`, region };
  } catch {
    return { locale: 'en-US', region: 'US' };
  }
}
