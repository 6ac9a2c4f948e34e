import type { orderEntries } from '@/lib/calendar/orderEntries';
import { orderNumberText } from '@/shared/orderNumberText';
import type { OrderNumber } from '@/shared/schemas/orderEvents';

type What = ReturnType<typeof orderEntries>[number]['what'];

const words: Readonly<Record<What, string>> = {
  approve: 'Approval and deposit, last day',
  orderBlanks: 'Order the blanks, last day',
  print: 'Print, last day',
  press: 'Press',
  wanted: 'Wanted',
};

/** @example 'Press: Club shirts, 26-014A' */
export const calendarEntryTitle = (what: What, name: string, number: OrderNumber | null): string =>
  `${words[what]}: ${name}${number === null ? '' : `, ${orderNumberText(number)}`}`;
