import type { Workshop } from '@/shared/schemas/workshop';
import {
  fahrenheitRegions,
  fusedPlugRegions,
  inchRegions,
  letterRegions,
  lowVoltRegions,
  mileRegions,
  regionCurrencies,
} from '@/shared/tables/regions';
import { type SheetSize, sheetSizes } from '@/shared/tables/sheetSizes';

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

/** @returns the sheet that lies in most printers of a place. */
export const usualSheet = ({ locale }: Pick<Region, 'locale'>): SheetSize =>
  letterRegions.includes(placeOf(locale).region) ? sheetSizes.letter : sheetSizes.a4;

/** @returns volts and amps of an ordinary circuit of a place, from memory. */
export function usualCircuit({ locale }: Pick<Region, 'locale'>): {
  readonly volts: number;
  readonly amps: number;
} {
  const { region } = placeOf(locale);
  if (region === 'JP') return { volts: 100, amps: 15 };
  if (lowVoltRegions.includes(region)) return { volts: 120, amps: 15 };
  return { volts: 230, amps: fusedPlugRegions.includes(region) ? 13 : 16 };
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
