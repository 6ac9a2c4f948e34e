import { DOUBLE_DIGITS } from '@/shared/decimal';
import { typicalMoneyCurrencies } from '@/shared/tables/typicalRates';

/**
 * Round multiples that bring amounts of the size of a dollar or a euro to the size money has elsewhere: an order of
 * magnitude, from memory, and no rate of exchange. A currency that is not here has a unit of about a dollar.
 */
const sizes: ReadonlyMap<string, number> = new Map([
  ...each(0.4, 'KWD BHD OMR JOD'),
  ...each(4, 'PLN RON MYR ILS AED SAR QAR PEN BRL GEL TND'),
  ...each(10, 'SEK NOK DKK CNY HKD MAD BOB'),
  ...each(20, 'CZK ZAR MXN MDL'),
  ...each(40, 'TRY UAH THB TWD PHP EGP UYU'),
  ...each(100, 'JPY ISK INR KES RSD'),
  ...each(400, 'HUF'),
  ...each(1000, 'KRW ARS CLP NGN'),
  ...each(4000, 'COP'),
  ...each(10_000, 'IDR'),
  ...each(20_000, 'VND'),
]);

/**
 * By how much an amount of the size of a dollar is multiplied to mean as much in a currency, roughly.
 *
 * @returns null where nobody has said
 */
export const moneySize = (currency: string): number | null =>
  typicalMoneyCurrencies.includes(currency) ? 1 : (sizes.get(currency) ?? null);

/**
 * A document with every rate of money multiplied; all else stays.
 *
 * @param times above 0
 */
export function scaleMoney<Body>(body: Body, times: number): Body {
  // The copy has the shape of the body: only numbers beside a unit of money change.
  return times === 1 ? body : (scaled(body, times) as Body);
}

function scaled(part: unknown, times: number): unknown {
  if (Array.isArray(part)) return part.map((one) => scaled(one, times));
  if (typeof part !== 'object' || part === null) return part;
  const entries = Object.entries(part);
  if (
    'unit' in part &&
    'value' in part &&
    String(part.unit).startsWith('money') &&
    typeof part.value === 'number'
  ) {
    return { ...part, value: timesExact(part.value, times) };
  }
  return Object.fromEntries(entries.map(([key, value]) => [key, scaled(value, times)]));
}

/** A product without the noise of binary fractions. */
export const timesExact = (value: number, times: number): number =>
  Number((value * times).toPrecision(DOUBLE_DIGITS - 3));

function each(times: number, currencies: string) {
  return currencies.split(' ').map((currency) => [currency, times] as const);
}
