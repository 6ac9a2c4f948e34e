import type { AnswerWords } from '@/app/_words/docket/answerWords';
import { hoursWords } from '@/app/_words/minutesWords';
import { minorMoney, minorWords } from '@/app/_words/orders/minorWords';
import type { YearRow } from '@/lib/year/yearRow';
import type { YearStanding } from '@/lib/year/yearStanding';

/** A line of a sum. */
export interface SumLine {
  readonly name: string;
  readonly figure: string;
}

/** A step from takings to what is left. */
interface PayStep extends SumLine {
  /** Whole minor units, as it adds; null where it is not known. */
  readonly minor: number | null;
  readonly look: 'ink' | 'house' | 'materials' | 'more';
}

/** Nothing of the year is noted, and nothing follows by itself. */
export const isBlankYear = ({ rows, hours, wearMinor, stockMinor }: YearStanding): boolean =>
  rows.length + hours.length === 0 && wearMinor === 0 && (stockMinor ?? 0) === 0;

/** @returns what an hour of the year brought. */
export function payAnswer(year: YearStanding, locale: string): AnswerWords {
  if (isBlankYear(year))
    return { key: 'Not known yet:', after: ' note what comes, what goes and the time you work' };
  const left = minorMoney(year.leftMinor, year.currency, locale);
  if (year.payMinor === null)
    return { key: `${left} left,`, after: ' pay an hour is not known: no hour of this year is noted' };
  const hours = hoursWords(year.hoursWorked, locale);
  // What nobody noted is no zero: wear alone would read as a bad wage.
  if (year.rows.every(({ leftOut }) => leftOut !== null))
    return { key: 'Not known yet:', after: ` no money of this year is noted beside ${hours} of work` };
  return {
    key: `${minorMoney(year.payMinor, year.currency, locale)} an hour,`,
    after: ` ${left} left for ${hours}`,
  };
}

/** @returns how takings become what is left, its last step; what is not known says so and never 0. */
export function paySteps(year: YearStanding, locale: string): readonly PayStep[] {
  const step = (name: string, minor: number | null, look: PayStep['look']): PayStep => ({
    ...{ name, minor, look },
    figure: minor === null ? 'not known' : minorWords(minor, year.currency, locale),
  });
  /** Where nobody noted any there may be some all the same. */
  const noted = (flow: YearRow['flow'], name: string, minor: number, look: PayStep['look']): PayStep =>
    year.rows.some((row) => row.flow === flow && row.leftOut === null)
      ? step(name, minor, look)
      : { name, minor: null, look, figure: 'none noted' };
  const isWearKnown = year.wear.machines.some(({ wear }) => wear !== null);
  const up = (minor: number | null, look: PayStep['look']) => ((minor ?? 0) > 0 ? 'more' : look);
  return [
    noted('taking', 'Takings', year.takingsMinor, 'ink'),
    step('Fees and commission', year.feesMinor, 'house'),
    ...(year.tinMinor === 0 ? [] : [step('Tins over or short', year.tinMinor, up(year.tinMinor, 'house'))]),
    // Where no paper says any, there may be some all the same.
    step(
      year.tax.untoldMinor === 0 ? 'Tax set aside' : 'Tax set aside, where papers say it',
      year.tax.minor === 0 && year.tax.untoldMinor !== 0 ? null : 0 - year.tax.minor,
      'house',
    ),
    noted('expense', 'Expenses without machines', 0 - year.expensesMinor, 'materials'),
    step(
      year.stockUnknown === 0
        ? 'Stock, end less beginning'
        : 'Stock, end less beginning, where its price is known',
      year.stockMinor,
      up(year.stockMinor, 'materials'),
    ),
    step('Wear of machines', isWearKnown ? 0 - year.wearMinor : null, 'house'),
    step(`Left, ${year.currency}`, year.leftMinor, 'ink'),
  ];
}

/** @returns what the figures rest on, each a sentence. */
export const payNotes = ({ stockMinor, machinesMinor }: YearStanding): readonly string[] => [
  'By the day money came and went. Tax on what you bought is not guessed: ask your local authority what you owe and what you may take off.',
  ...(stockMinor === null
    ? ['What lies in stock is not valued here, so what you bought and still have counts as spent.']
    : []),
  ...(machinesMinor === 0 ? [] : ['A machine that was bought is not taken off at once: its wear is.']),
  'Ask your bookkeeper how stock and wear go into the books.',
];
