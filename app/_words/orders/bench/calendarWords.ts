import type { orderEntries } from '@/lib/calendar/orderEntries';
import { orderNumberText } from '@/shared/orderNumberText';
import type { OrderNumber } from '@/shared/schemas/orderEvents';

type What = ReturnType<typeof orderEntries>[number]['what'];

const words: Readonly<Record<What, string>> = {
  approve: 'Approval and deposit, last day',
  orderBlanks: 'Order the blanks, last day',
  print: 'Print, last day',
  press: 'Press',
  wanted: 'Due',
};

/** @example 'Press: Club shirts, 26-014A' */
export const calendarEntryTitle = (what: What, name: string, number: OrderNumber | null): string =>
  `${words[what]}: ${name}${number === null ? '' : `, ${orderNumberText(number)}`}`;

/** What is said beside the calendar file: of an order that has days, and of one whose days are called off. */
export const calendarFileWords = {
  days: {
    line: null,
    button: 'Calendar file',
    saved: 'Saved. Open it with your calendar; save it again when something has changed.',
  },
  off: {
    line: 'Your calendar may still hold days of this order, for they went out in a file before.',
    button: 'Calendar file that calls them off',
    saved: 'Saved. Open it with your calendar, and they go from it.',
  },
} as const;
