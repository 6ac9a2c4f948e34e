import { dayFormat } from '@/app/_words/dayFormat';
import { elementNames } from '@/app/_words/elementNames';
import { expenseWords } from '@/app/_words/orders/money/orderMoneyWords';
import type { HourRow } from '@/lib/year/hourRows';
import type { YearRow } from '@/lib/year/yearRow';
import { yearSpan } from '@/lib/year/yearSpan';

const moneyKinds = {
  payment: 'Payment',
  refund: 'Given back',
  reversal: 'Taken back by the bank',
  stallTakings: 'Stall day',
  shopPayment: 'Payment of a shop',
  cardFee: 'Fee kept back',
  commission: 'Commission of a stall',
  tin: 'Tin over or short, coins rounded',
} as const;

/** @returns what a row of the year is called. */
export function rowKindWords(row: YearRow | HourRow): string {
  if ('minutes' in row)
    return row.element === null ? 'Hours' : `Hours, ${elementNames[row.element].toLowerCase()}`;
  return row.flow === 'expense' ? expenseWords[row.kind] : moneyKinds[row.kind];
}

/** @returns what was noted with hours; of those that nobody noted, that they are as planned. */
export const hourNoteWords = ({ from, note }: Pick<HourRow, 'from' | 'note'>): string =>
  from === 'closePlan' || from === 'standard' ? 'as planned, not noted' : note;

/** @returns what is called why it is in no sum; empty where it is in one. */
export function leftOutWords(row: YearRow | HourRow): string {
  if ('minutes' in row) return row.isInClose ? 'in the hours of the close' : '';
  if (row.leftOut === null) return '';
  const { leftOut } = row;
  switch (leftOut.why) {
    case 'otherCurrency':
      return 'another currency than the sums';
    case 'paidBy':
      return `the expense ${leftOut.entryId} has its receipt`;
    case 'deliverySays':
      return `the delivery ${leftOut.entryId} of its receipt counts instead`;
    default:
      return leftOut satisfies never;
  }
}

export const yearWait = 'The year is being added up…';

/** @returns the name of a year: “2026”, or “April 2026 to March 2027”. */
export function yearName(year: number, firstMonth: number, locale: string): string {
  if (firstMonth === 1) return String(year);
  const { from, to } = yearSpan(year, firstMonth);
  const month = (day: string) =>
    dayFormat(locale, { month: 'long', year: 'numeric' }).format(new Date(`${day}T00:00:00Z`));
  return `${month(from)} to ${month(to)}`;
}

/** @returns a month by its first day: “Apr”. */
export const monthName = (day: string, locale: string, length: 'short' | 'long' = 'short'): string =>
  dayFormat(locale, { month: length }).format(new Date(`${day}T00:00:00Z`));

/** @returns the way of selling; what is known of it where its channel is gone. */
export function sellingWayName(
  sellingWay: string,
  channels: readonly { id: string; name: string }[],
): string {
  const named: Readonly<Record<string, string>> = { orders: 'Orders', stall: 'Stall days', shops: 'Shops' };
  return (
    channels.find(({ id }) => id === sellingWay)?.name ?? named[sellingWay] ?? 'A way of selling that is gone'
  );
}
