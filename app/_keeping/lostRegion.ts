import { type Region, regionOf } from '@/lib/examples/regionOf';
import { isPlainObject } from '@/lib/merging/sameValue';
import { workshopSchema } from '@/shared/schemas/workshop';

const { currency, locale, units } = workshopSchema.shape;

/**
 * Money, numbers and units of a workshop whose record cannot be read: each as the record still says it, else as
 * the device's language suggests.
 *
 * @param raw the record as it was found; `undefined` where there is none
 */
export function lostRegion(raw: unknown, language: string): Region {
  const guess = regionOf(language);
  const body = isPlainObject(raw) && isPlainObject(raw.body) ? raw.body : {};
  return {
    currency: currency.safeParse(body.currency).data ?? guess.currency,
    locale: locale.safeParse(body.locale).data ?? guess.locale,
    units: units.safeParse(body.units).data ?? guess.units,
  };
}
