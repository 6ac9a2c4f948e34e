import type { AnswerWords } from '@/app/_words/docket/answerWords';
import type { Formatter } from '@/app/_words/formatter';
import { minorMoney, minorWords } from '@/app/_words/orders/minorWords';
import type { YearStanding } from '@/lib/year/yearStanding';
import { toMinor } from '@/shared/money';
import type { SumLine } from './payWords';

/** @returns what lies in stock at what was paid, and what machines lost. */
export function worthAnswer(year: YearStanding, locale: string): AnswerWords {
  const { stockEndMinor, stockMinor, wear, wearMinor, currency } = year;
  const money = (minor: number) => minorMoney(minor, currency, locale);
  const isWearKnown = wear.machines.some((one) => one.wear !== null);
  const worn = isWearKnown ? `machines wore by ${money(wearMinor)}` : 'wear of machines is not known';
  if (stockEndMinor === null || stockMinor === null) return { key: 'No stock is noted,', after: ` ${worn}` };
  const moved =
    stockMinor === 0
      ? 'as at the beginning'
      : `${money(Math.abs(stockMinor))} ${stockMinor > 0 ? 'more' : 'less'} than at the beginning`;
  return { key: `${money(stockEndMinor)} in stock,`, after: ` ${moved}; ${worn}` };
}

/** @returns each machine with what it lost and by what that was told. */
export const wearLines = (
  { wear, currency }: YearStanding,
  formatter: Formatter,
  locale: string,
): readonly SumLine[] =>
  wear.machines.map(({ name, uses, counted, wear: lost, by }) => {
    const used = formatter.count(uses, counted === 'presses' ? 'press' : 'sheet', counted);
    return {
      name: by === null ? name : `${name}, by ${by === 'use' ? used : 'its years'}`,
      figure: lost === null ? 'not known' : minorWords(0 - toMinor(lost, currency), currency, locale),
    };
  });

/** @returns a fold for stock whose bill nobody may have noted: what it is named and says; null where there is none */
export function stockUntoldWords(
  { stockUntoldMinor, currency }: YearStanding,
  locale: string,
): { readonly name: string; readonly says: string } | null {
  if (stockUntoldMinor === 0) return null;
  const money = minorMoney(stockUntoldMinor, currency, locale);
  return {
    name: `Perhaps not paid: ${money} of stock`,
    says: `Stock bought this year without a delivery cost ${money} more than is noted as spent on goods. It counts as worth, so without its expense the year looks better than it was. Note what was paid.`,
  };
}

/** @returns what is not in these figures and how to mend it, each a sentence. */
export function worthNotes(year: YearStanding, formatter: Formatter): readonly string[] {
  const { stockUnknown, wear } = year;
  const unpriced = wear.machines.filter((one) => one.wear === null).map(({ name }) => name);
  const { presses, sheets } = wear.unplaced;
  return [
    ...(stockUnknown === 0
      ? []
      : [
          stockUnknown === 1
            ? '1 thing in stock is not all valued: nobody said what it cost, or it was in another currency. It is worth more than is counted here.'
            : `${formatter.count(stockUnknown, 'thing')} in stock are not all valued: nobody said what they cost, or it was in another currency. They are worth more than is counted here.`,
        ]),
    ...(unpriced.length === 0
      ? []
      : [
          `No wear is known of ${unpriced.join(', ')}: set its price and years in the workshop, or note what is pressed and printed.`,
        ]),
    ...(presses + sheets === 0
      ? []
      : [
          `${formatter.count(presses, 'press', 'presses')} and ${formatter.count(sheets, 'sheet')} were of a machine that is not here any more.`,
        ]),
  ];
}
