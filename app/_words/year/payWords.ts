import type { AnswerWords } from '@/app/_words/docket/answerWords';
import type { Formatter } from '@/app/_words/formatter';
import { hoursWords } from '@/app/_words/minutesWords';
import { minorMoney, minorWords } from '@/app/_words/orders/minorWords';
import type { YearStanding } from '@/lib/year/yearStanding';

/** A line of a sum. */
export interface SumLine {
  readonly name: string;
  readonly figure: string;
  readonly isTotal?: true;
}

/** @returns what an hour of the year brought. */
export function payAnswer(year: YearStanding, locale: string): AnswerWords {
  const left = minorMoney(year.leftMinor, year.currency, locale);
  if (year.payMinor === null)
    return { key: `${left} left,`, after: ' pay an hour is not known: no hour of this year is noted' };
  const hours = hoursWords(year.hoursWorked, locale);
  return {
    key: `${minorMoney(year.payMinor, year.currency, locale)} an hour,`,
    after: ` ${left} left for ${hours}`,
  };
}

/** @returns how takings become what is left; what is not known says so and never 0. */
export function payLines(year: YearStanding, locale: string): readonly SumLine[] {
  const plain = (minor: number) => minorWords(minor, year.currency, locale);
  const less = (minor: number) => plain(0 - minor);
  return [
    { name: 'Takings', figure: plain(year.takingsMinor) },
    { name: 'Fees and commission', figure: plain(year.feesMinor) },
    ...(year.tinMinor === 0 ? [] : [{ name: 'Tins over or short', figure: plain(year.tinMinor) }]),
    { name: 'Tax set aside', figure: less(year.tax.minor) },
    { name: 'Expenses without machines', figure: less(year.expensesMinor) },
    {
      name: 'Stock, end less beginning',
      figure: year.stockMinor === null ? 'not known' : plain(year.stockMinor),
    },
    {
      name: 'Wear of machines',
      figure: year.wear.machines.some(({ wear }) => wear !== null) ? less(year.wearMinor) : 'not known',
    },
    { name: `Left, ${year.currency}`, figure: plain(year.leftMinor), isTotal: true },
    {
      name: 'Hours',
      figure: year.hoursWorked === 0 ? 'none noted' : hoursWords(year.hoursWorked, locale),
    },
    {
      name: `An hour, ${year.currency}`,
      figure: year.payMinor === null ? 'not known' : plain(year.payMinor),
      isTotal: true,
    },
  ];
}

/** @returns what the figures leave out or rest on, each a sentence; the cautions first. */
export function payNotes(year: YearStanding, formatter: Formatter, locale: string): readonly string[] {
  const money = (minor: number) => minorMoney(minor, year.currency, locale);
  const { tax, wear, stockMinor, stockUnknown, machinesMinor } = year;
  const unpriced = wear.machines.filter((one) => one.wear === null).map(({ name }) => name);
  const { presses, sheets } = wear.unplaced;
  return [
    ...(tax.untoldMinor === 0
      ? []
      : [
          `No paper says what tax is inside ${money(tax.untoldMinor)} of the takings: nothing is set aside for it.`,
        ]),
    'Tax on what you bought is not guessed. Ask your local authority what you owe and what you may take off.',
    ...(stockMinor === null
      ? ['What lies in stock is not valued here, so what you bought and still have counts as spent.']
      : []),
    ...(stockUnknown === 0
      ? []
      : [
          `${formatter.count(stockUnknown, 'pile')} of stock ${stockUnknown === 1 ? 'is' : 'are'} not all valued: nobody said what they cost, or it was in another currency.`,
        ]),
    ...(machinesMinor === 0
      ? []
      : [
          `Machines bought for ${money(machinesMinor)} are not taken off at once: their wear is, year by year. Ask your bookkeeper how stock and wear go into the books.`,
        ]),
    ...(machinesMinor === 0 ? ['Ask your bookkeeper how stock and wear go into the books.'] : []),
    ...(unpriced.length === 0
      ? []
      : [
          `No wear is known of ${unpriced.join(', ')}: set its price and years in the workshop, or note what is pressed and printed.`,
        ]),
    ...(presses + sheets === 0
      ? []
      : [
          `${formatter.count(presses, 'press')} and ${formatter.count(sheets, 'sheet')} were of a machine that is not here any more.`,
        ]),
  ];
}
