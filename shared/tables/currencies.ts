/*
 * Minor units of ISO 4217, list one as of 2024-06-25. Codes without a minor unit (metals, testing codes) are
 * left out: nothing can be priced in them. Display digits of locale data differ for some and are not used.
 */
const NONE = 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF';
const TWO =
  'AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BMD BND BOB BOV BRL BSD BTN BWP BYN BZD CAD CDF ' +
  'CHE CHF CHW CNY COP COU CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD ' +
  'GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL ' +
  'MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MXV MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR ' +
  'PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP ' +
  'TRY TTD TWD TZS UAH USD USN UYU UZS VED VES WST XAD XCD XCG YER ZAR ZMW ZWG';
const THREE = 'BHD IQD JOD KWD LYD OMR TND';
const FOUR = 'CLF UYW';

const digitsByCode: ReadonlyMap<string, number> = new Map(
  [
    [NONE, 0],
    [TWO, 2],
    [THREE, 3],
    [FOUR, 4],
  ].flatMap(([codes, digits]) =>
    String(codes)
      .split(' ')
      .map((code) => [code, Number(digits)] as const),
  ),
);

/** Every ISO 4217 code that has a minor unit, in alphabetical order. */
export const currencyCodes: readonly string[] = [...digitsByCode.keys()].sort();

/**
 * @param code ISO 4217 alphabetic code, upper case
 * @returns decimal digits of the currency's minor unit, 0 to 4, or null for an unknown code
 * @example currencyDigits('KWD') // => 3
 */
export const currencyDigits = (code: string): number | null => digitsByCode.get(code) ?? null;
