/*
 * Currencies in use by region: ISO 3166-1 codes against ISO 4217. Only a first guess that the maker can
 * change, so regions whose makers are few are left out.
 */
const byCurrency = {
  USD: 'US PR EC SV PA',
  EUR: 'AT BE BG CY DE EE ES FI FR GR HR IE IT LT LU LV MT NL PT SI SK',
  GBP: 'GB',
  CAD: 'CA',
  AUD: 'AU',
  NZD: 'NZ',
  CHF: 'CH LI',
  SEK: 'SE',
  NOK: 'NO',
  DKK: 'DK',
  PLN: 'PL',
  CZK: 'CZ',
  HUF: 'HU',
  RON: 'RO',
  ISK: 'IS',
  TRY: 'TR',
  UAH: 'UA',
  JPY: 'JP',
  CNY: 'CN',
  KRW: 'KR',
  INR: 'IN',
  IDR: 'ID',
  MYR: 'MY',
  PHP: 'PH',
  SGD: 'SG',
  THB: 'TH',
  VND: 'VN',
  HKD: 'HK',
  TWD: 'TW',
  ZAR: 'ZA',
  NGN: 'NG',
  KES: 'KE',
  EGP: 'EG',
  MAD: 'MA',
  ILS: 'IL',
  AED: 'AE',
  SAR: 'SA',
  KWD: 'KW',
  BRL: 'BR',
  MXN: 'MX',
  ARS: 'AR',
  CLP: 'CL',
  COP: 'CO',
  PEN: 'PE',
} as const;

/** Currency by region, for the first guess. */
export const regionCurrencies: ReadonlyMap<string, string> = new Map(
  Object.entries(byCurrency).flatMap(([currency, regions]) =>
    regions.split(' ').map((region) => [region, currency] as const),
  ),
);

/** Regions whose trade measures prints in inches. */
export const inchRegions: readonly string[] = ['US', 'CA', 'PR'];
/** Regions whose presses are set in degrees Fahrenheit. */
export const fahrenheitRegions: readonly string[] = ['US', 'PR'];
/** Regions whose roads are measured in miles. */
export const mileRegions: readonly string[] = ['US', 'GB', 'PR'];
/** Regions where letter paper is in the printers; everywhere else it is A4 (common practice). */
export const letterRegions: readonly string[] = ['US', 'CA', 'PR', 'MX', 'PH', 'CL', 'CO', 'VE', 'GT', 'CR'];
/** Regions whose ordinary circuits have 120 V and 15 A; from memory. */
export const lowVoltRegions: readonly string[] = [
  'US',
  'CA',
  'PR',
  'MX',
  'CO',
  'VE',
  'GT',
  'CR',
  'EC',
  'PA',
  'SV',
];
/** Regions whose plugs are fused at 13 A. */
export const fusedPlugRegions: readonly string[] = ['GB', 'IE', 'MT', 'CY', 'HK', 'SG', 'MY'];
