import type { AnswerWords } from '@/app/_words/docket/answerWords';
import { elementNames } from '@/app/_words/elementNames';
import type { Formatter } from '@/app/_words/formatter';
import { hoursWords, minutesWords } from '@/app/_words/minutesWords';
import { minorMoney, minorWords } from '@/app/_words/orders/minorWords';
import { expenseWords } from '@/app/_words/orders/money/orderMoneyWords';
import type { YearStanding } from '@/lib/year/yearStanding';
import type { SumLine } from './payWords';
import { monthName, sellingWayName } from './yearNames';

/** @returns what came in, and what of it is set aside for tax. */
export function takingsAnswer({ takingsMinor, tax, currency }: YearStanding, locale: string): AnswerWords {
  const money = (minor: number) => minorMoney(minor, currency, locale);
  if (takingsMinor === 0 && tax.minor === 0) return { key: 'Nothing came in yet' };
  const none = tax.untoldMinor === 0 ? ' no tax in it, as papers say' : ' no paper names tax in it';
  return {
    key: `${money(takingsMinor)} came,`,
    after: tax.minor === 0 ? none : ` ${money(tax.minor)} of it tax to set aside`,
  };
}

export const takingsLines = (
  { ways, currency }: YearStanding,
  channels: readonly { id: string; name: string }[],
  locale: string,
): readonly SumLine[] =>
  ways.map(({ sellingWay, minor }) => ({
    name: sellingWayName(sellingWay, channels),
    figure: minorWords(minor, currency, locale),
  }));

/** @returns what is known of tax in takings and what is not, each a sentence with whom to ask. */
export const taxNotes = ({ tax, currency }: YearStanding, locale: string): readonly string[] => [
  ...(tax.minor === 0 ? [] : ['Tax as papers and closes say it. Ask your local authority when it is due.']),
  ...(tax.untoldMinor === 0
    ? []
    : [
        `No paper says what tax is inside ${minorMoney(tax.untoldMinor, currency, locale)} of it, so nothing is set aside for that. Ask your local authority whether you owe any.`,
      ]),
];

/** @returns what went out, machines apart. */
export function expensesAnswer(
  { expensesMinor, machinesMinor, currency }: YearStanding,
  locale: string,
): AnswerWords {
  const money = (minor: number) => minorMoney(minor, currency, locale);
  const machines = machinesMinor === 0 ? '' : ` and ${money(machinesMinor)} for machines`;
  return expensesMinor === 0 && machinesMinor === 0
    ? { key: 'Nothing spent is noted' }
    : { key: `${money(expensesMinor)} spent`, after: machines };
}

export const expenseLines = ({ expenses, currency }: YearStanding, locale: string): readonly SumLine[] =>
  expenses.map(({ kind, minor }) => ({
    name: expenseWords[kind],
    figure: minorWords(minor, currency, locale),
  }));

/** @returns all hours of the year. */
export const hoursAnswer = ({ hoursWorked }: YearStanding, locale: string): AnswerWords =>
  hoursWorked === 0
    ? { key: 'No hour is noted,', after: ' so pay an hour is not known' }
    : { key: hoursWords(hoursWorked, locale), after: ' in all' };

/** @returns hours by what was done, the most first; those of stall days and runs that nobody parted stand by themselves. */
export function hourLines({ hours }: YearStanding, locale: string): readonly SumLine[] {
  const sums = new Map<string, number>();
  for (const { element, minutes, isInClose } of hours) {
    const name = element === null ? 'Stall days and runs, not parted' : elementNames[element];
    if (!isInClose) sums.set(name, (sums.get(name) ?? 0) + minutes);
  }
  return [...sums]
    .toSorted(([one, some], [other, more]) => more - some || (one < other ? -1 : 1))
    .map(([name, minutes]) => ({ name, figure: minutesWords(minutes, locale) }));
}

/** @returns how overhead that was reckoned compares with what was paid. */
export function overheadAnswer({ overhead, currency }: YearStanding, locale: string): AnswerWords {
  const { absorbedMinor, actualMinor } = overhead;
  const money = (minor: number) => minorMoney(minor, currency, locale);
  if (absorbedMinor === null)
    return { key: `${money(actualMinor)} paid,`, after: ' what work was to carry is not known' };
  if (actualMinor === 0)
    return absorbedMinor === 0
      ? { key: 'None carried, none paid' }
      : { key: `${money(absorbedMinor)} carried by work,`, after: ' nothing paid for it is noted' };
  const gap = absorbedMinor - actualMinor;
  const compared = `${money(absorbedMinor)} carried by work, ${money(actualMinor)} paid`;
  if (gap === 0) return { key: 'Carried to the cent,', after: ` ${compared}` };
  return {
    key: `${money(Math.abs(gap))} ${gap > 0 ? 'more carried than paid' : 'not carried'},`,
    after: ` ${compared}`,
  };
}

/** @returns the same for each three months: “Jan to Mar”, carried and paid. */
export const quarterLines = (
  { quarters, currency }: YearStanding,
  locale: string,
): readonly Readonly<{ name: string; carried: string; paid: string }>[] =>
  quarters.map(({ from, to, absorbedMinor, actualMinor }) => ({
    name: `${monthName(from, locale)} to ${monthName(to, locale)}`,
    carried: absorbedMinor === null ? 'not known' : minorWords(absorbedMinor, currency, locale),
    paid: minorWords(actualMinor, currency, locale),
  }));

/**
 * @param hasWear the yearly overhead pays for worn machines
 * @returns what is compared, and what to do about it
 */
export function overheadNote({ overhead }: YearStanding, hasWear: boolean, formatter: Formatter): string {
  const { absorbedMinor, actualMinor, hours } = overhead;
  const on = `Work on orders, runs and stall days, ${formatter.hours(hours)}, at the overhead of an hour it was priced with; paid for power, room, insurance, office${hasWear ? ', advertising and wear' : ' and advertising'}.`;
  if (absorbedMinor === null) return `${on} Set yearly running cost and hours in the workshop.`;
  if (absorbedMinor < actualMinor)
    return `${on} Prices carried too little: look at both rates in the workshop.`;
  return on;
}
