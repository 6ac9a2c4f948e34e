import { currencyDigits } from './currencies';

/*
 * The smallest coin a cash total is paid in, where it is more than the minor unit, in currency units. From Unicode
 * CLDR 48.2 supplemental currency data (cashRounding, cashDigits), but for three of which it has no such step: Australia and
 * New Zealand, which round by custom since their one- and two-cent (1992) and five-cent (2006) coins went, and Hungary, by
 * law since its one and two forints went (2008).
 */
const WHOLE = 'AMD CRC CZK GYD MNT MUR NOK RSD SEK TWD TZS UZS';

const stepByCode: ReadonlyMap<string, number> = new Map([
  ['CAD', 0.05],
  ['CHF', 0.05],
  ['AUD', 0.05],
  ['NZD', 0.1],
  ['DKK', 0.5],
  ['HUF', 5],
  ...WHOLE.split(' ').map((code) => [code, 1] as const),
]);

/** A customer pays the lower of two coins: the Retailers Association of New Zealand has five cents go down (2006). */
const HALF_DOWN: ReadonlySet<string> = new Set(['NZD']);

/** @returns where a cash total goes that lies halfway between two coins; upwards where no other custom is known */
export const cashHalf = (code: string): 'halfUp' | 'halfDown' =>
  HALF_DOWN.has(code) ? 'halfDown' : 'halfUp';

/**
 * @param code ISO 4217 alphabetic code, upper case
 * @returns smallest cash amount in currency units; the minor unit where cash is not rounded; null for an unknown code
 * @example cashStep('DKK') // => 0.5
 */
export function cashStep(code: string): number | null {
  const digits = currencyDigits(code);
  return stepByCode.get(code) ?? (digits === null ? null : Number(`1e-${digits}`));
}
