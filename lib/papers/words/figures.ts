import { formatNumber } from '@/shared/formatNumber';
import { formatMinor, fromMinor, type MinorUnits } from '@/shared/money';
import { numberFormat } from '@/shared/numberFormat';
import { currencyDigits } from '@/shared/tables/currencies';
import { inchesFromMm } from '@/shared/units';

/** Figures as a paper writes them. */
export interface Figures {
  /** Whole minor units, without the currency's name. */
  readonly money: (minor: number) => string;
  /** The same without its decimals where they say nothing: 28, and 2.50. */
  readonly price: (minor: number) => string;
  /** What a supplier asks for one, currency units: with the digits of its currency, and finer ones where it has them. */
  readonly unitPrice: (amount: number) => string;
  readonly count: (count: number) => string;
  /** What may be in part: metres, millilitres. */
  readonly quantity: (quantity: number) => string;
  readonly share: (share: number) => string;
  readonly day: (day: string) => string;
  /** Minutes after midnight, as a clock shows them. */
  readonly time: (minute: number) => string;
  readonly length: (lengthMm: number) => string;
  readonly size: (widthMm: number, heightMm: number) => string;
}

interface FigureContext {
  readonly language: string;
  readonly locale: string;
  readonly length: 'in' | 'mm';
  readonly currency: string;
}

/** Marks of numbers by the locale; days in the language of the paper, in the order of the locale's place. */
export function figuresOf({ language, locale, length, currency }: FigureContext): Figures {
  const numbers = usable(locale);
  const days = new Intl.DateTimeFormat(dayLocale(language, numbers), { dateStyle: 'long', timeZone: 'UTC' });
  const times = new Intl.DateTimeFormat(dayLocale(language, numbers), {
    timeStyle: 'short',
    timeZone: 'UTC',
  });
  const number = (value: number, maxDecimals: number) => formatNumber(value, numbers, { maxDecimals });
  const measure = (lengthMm: number) =>
    length === 'in' ? number(inchesFromMm(lengthMm), 2) : number(lengthMm, 1);
  return {
    money: (minor) => formatMinor(minor as MinorUnits, currency, numbers),
    price(minor) {
      const units = fromMinor(minor as MinorUnits, currency);
      return Number.isInteger(units) ? number(units, 0) : formatMinor(minor as MinorUnits, currency, numbers);
    },
    unitPrice: (amount) =>
      formatNumber(amount, numbers, { minDecimals: currencyDigits(currency) ?? 2, maxDecimals: 6 }),
    count: (count) => number(count, 0),
    quantity: (quantity) => number(quantity, 4),
    share: (share) =>
      numberFormat(numbers, { style: 'percent', maximumFractionDigits: 3 }).format(
        Number(share.toPrecision(12)),
      ),
    day(day) {
      const moment = new Date(`${day}T00:00:00Z`);
      return Number.isNaN(moment.getTime()) ? day : days.format(moment);
    },
    time: (minute) => times.format(new Date(minute * 60_000)),
    length: (lengthMm) => `${measure(lengthMm)} ${length}`,
    size: (widthMm, heightMm) => `${measure(widthMm)} × ${measure(heightMm)} ${length}`,
  };
}

// Helpers

/** The locale a tag stands for; one may have the right form and mean nothing. */
function usable(tag: string): string {
  try {
    return numberFormat(tag).resolvedOptions().locale;
  } catch {
    return 'en';
  }
}

function dayLocale(language: string, locale: string): string {
  if (language.includes('-')) return usable(language);
  const region = /[-_]([A-Za-z]{2}|\d{3})\b/.exec(locale)?.[1];
  return usable(region === undefined ? language : `${language}-${region}`);
}
