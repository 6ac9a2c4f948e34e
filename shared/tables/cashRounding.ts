import { currencyDigits } from './currencies';

/*
 * The smallest coin a cash total is paid in, where it is more than the minor unit, in currency units. From Unicode
 * CLDR 48.2 supplemental currency data (cashRounding, cashDigits), but for Australia and New Zealand, which round by
 * custom and law since their one- and two-cent (1992) and five-cent (2006) coins went.
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

/**
 * @param code ISO 4217 alphabetic code, upper case
 * @returns smallest cash amount in currency units; the minor unit where cash is not rounded; null for an unknown code
 * @example cashStep('DKK') // => 0.5
 */
export function cashStep(code: string): number | null {
  const digits = currencyDigits(code);
  return stepByCode.get(code) ?? (digits === null ? null : Number(`1e-${digits}`));
}
