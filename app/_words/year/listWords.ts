import type { AnswerWords } from '@/app/_words/docket/answerWords';
import { elementNames } from '@/app/_words/elementNames';
import type { Formatter } from '@/app/_words/formatter';
import { minutesWords } from '@/app/_words/minutesWords';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { HourRow } from '@/lib/year/hourRows';
import type { YearRow } from '@/lib/year/yearRow';
import type { YearStanding } from '@/lib/year/yearStanding';
import { rowKindWords } from './yearNames';

/** @returns how many were noted. */
export function entriesAnswer({ rows, hours }: YearStanding, formatter: Formatter): AnswerWords {
  const expenses = new Set(rows.flatMap((row) => (row.flow === 'expense' ? [row.id] : []))).size;
  const noted = hours.filter(({ from }) => from === 'noted').length;
  if (expenses + noted === 0)
    return { key: 'Nothing noted yet,', after: ' note rent, power, goods and the time you work' };
  return {
    key: formatter.count(expenses, 'expense'),
    after: `, ${formatter.count(noted, 'note')} of hours`,
  };
}

/** @returns what an entry is called in the list, where its figure says that it is hours. */
export const entryName = (row: YearRow | HourRow): string =>
  'minutes' in row && row.element !== null ? elementNames[row.element] : rowKindWords(row);

/** @returns what leads from the newest entries on to more of them. */
export const moreEntriesWords = (next: number, all: number): string =>
  next >= all ? `Show all ${all}` : `Show ${next} of ${all}`;

/** @returns how much or how long. */
export const entryFigure = (row: YearRow | HourRow, locale: string): string =>
  'minutes' in row
    ? minutesWords(row.minutes, locale)
    : minorMoney(0 - row.amountMinor, row.currency, locale);

export const foundWords = (found: number, formatter: Formatter): string =>
  found === 0 ? 'Nothing found' : `${formatter.count(found, 'entry', 'entries')} found`;
