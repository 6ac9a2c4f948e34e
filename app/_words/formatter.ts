import { formatNumber } from '@/shared/formatNumber';
import { formatMinor, LARGEST_AMOUNT, toMinor } from '@/shared/money';
import type { Workshop } from '@/shared/schemas/workshop';
import { currencyDigits } from '@/shared/tables/currencies';
import { barFromKpa, fahrenheitFromCelsius, inchesFromMm, psiFromKpa } from '@/shared/units';
import { dayFormat } from './dayFormat';
import { unitWords } from './unitWords';
import { usableLocale } from './usableLocale';

/** How the maker reads numbers. */
export interface TextContext {
  readonly locale: string;
  readonly units: Workshop['units'];
  /** ISO 4217 code. */
  readonly currency: string;
  /** What documents and parts of the workshop are called, removed ones too; null where nobody knows. */
  readonly nameOf?: NameOf;
}

/** @param kind such as blank, artwork, printer, press */
export type NameOf = (kind: string, id: string) => string | null;

/** Writes figures the maker's way, the unit after the number. */
export interface Formatter {
  readonly number: (value: number, maxDecimals?: number) => string;
  /** A share 0 to 1 as a percentage. */
  readonly share: (value: number) => string;
  readonly length: (lengthMm: number) => string;
  readonly size: (widthMm: number, heightMm: number) => string;
  /** °C in, the maker's scale out. */
  readonly temperature: (celsius: number) => string;
  readonly pressure: (kpa: number) => string;
  /** An amount in the currency's own digits. */
  readonly money: (amount: number) => string;
  /** An amount so small that the currency's own digits would hide it. */
  readonly smallMoney: (amount: number) => string;
  /** A rate with its unit; money has the currency's digits at least, small amounts keep more. */
  readonly rate: (value: number, unit: string) => string;
  readonly hours: (hours: number) => string;
  readonly day: (day: string) => string;
  /** "1 piece", "3 pieces". */
  readonly count: (count: number, one: string, many?: string) => string;
}

/** @returns the formatter of a maker's locale, units and currency. */
export function formatterFor(context: TextContext): Formatter {
  const locale = usableLocale(context.locale);
  const { units, currency } = context;
  const number = (value: number, maxDecimals = 2) => formatNumber(value, locale, { maxDecimals });
  const lengthNumber = (lengthMm: number) =>
    units.length === 'in' ? number(inchesFromMm(lengthMm), 2) : number(lengthMm, 1);
  const money = (amount: number) =>
    Math.abs(amount) <= LARGEST_AMOUNT
      ? `${formatMinor(toMinor(amount, currency), currency, locale)} ${currency}`
      : `${number(amount, 0)} ${currency}`;
  const share = (value: number) => `${number(value * 100, 1)} %`;
  return {
    number,
    share,
    length: (lengthMm) => `${lengthNumber(lengthMm)} ${units.length}`,
    size: (widthMm, heightMm) => `${lengthNumber(widthMm)} × ${lengthNumber(heightMm)} ${units.length}`,
    temperature: (celsius) =>
      units.temperature === 'F'
        ? `${number(fahrenheitFromCelsius(celsius), 0)} °F`
        : `${number(celsius, 0)} °C`,
    pressure: (kpa) => {
      switch (units.pressure) {
        case 'psi':
          return `${number(psiFromKpa(kpa), 0)} psi`;
        case 'kPa':
          return `${number(kpa, 0)} kPa`;
        case 'bar':
          return `${number(barFromKpa(kpa), 1)} bar`;
        default:
          return units.pressure satisfies never;
      }
    },
    money,
    smallMoney: (amount) => (amount >= 1 ? money(amount) : `${number(amount, 4)} ${currency}`),
    rate: (value, unit) => {
      if (unit === 'share') return share(value);
      if (unit === 'money') return money(value);
      // "4.60 USD a piece" is an amount; "4.6" reads like a measure.
      const minDecimals = unit.startsWith('money/') ? (currencyDigits(currency) ?? 2) : 0;
      const figure = formatNumber(value, locale, { minDecimals, maxDecimals: Math.max(4, minDecimals) });
      return `${figure} ${unitWords(unit, currency)}`;
    },
    hours: (hours) => `${number(hours, 1)} h`,
    day: (day) => {
      const moment = new Date(`${day}T00:00:00Z`);
      return Number.isNaN(moment.getTime()) ? day : dayFormat(locale).format(moment);
    },
    count: (count, one, many = pluralOf(one)) => `${number(count, 2)} ${count === 1 ? one : many}`,
  };
}

/** "press" and "box" take another syllable. */
const pluralOf = (one: string): string => (/(?:s|x|z|ch|sh)$/.test(one) ? `${one}es` : `${one}s`);
