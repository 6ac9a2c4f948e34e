import type { Formatter } from '@/app/_words/formatter';
import { listed } from '@/app/_words/listed';
import type { Customer, CustomerAddress } from '@/shared/schemas/customer';

export const addressPurposeWords: Readonly<Record<CustomerAddress['purpose'], string>> = {
  both: 'bills and goods',
  bills: 'bills',
  goods: 'goods',
};

/** What a customer that was erased is called from then on. */
export const erasedName = (erasedOn: string, formatter: Pick<Formatter, 'day'>): string =>
  `Erased on ${formatter.day(erasedOn)}`;

/** @returns who is written to, as the line under a customer's name: “Alex Placeholder, 555 0101” */
export function writtenToWords({ people }: Pick<Customer, 'people'>): string {
  const [first] = people;
  if (first === undefined) return 'nobody to write to yet';
  const reach = [first.email, first.phone].map((one) => one.trim()).find((one) => one !== '');
  return reach === undefined ? first.name : `${first.name}, ${reach}`;
}

/** @returns how many a search found */
export const foundWords = (count: number, formatter: Pick<Formatter, 'count'>): string =>
  `${count === 0 ? 'No customer' : formatter.count(count, 'customer')} found`;

/** An answer line: what leads it, and the plain rest. */
interface Answer {
  readonly strong: string;
  readonly rest: string;
}

export function peopleAnswer(
  { people }: Pick<Customer, 'people'>,
  formatter: Pick<Formatter, 'count'>,
): Answer {
  const [first, ...others] = people;
  if (first === undefined) return { strong: 'Nobody', rest: ' to write to yet' };
  return {
    strong: first.name,
    rest: ` is written to${others.length === 0 ? '' : `, ${formatter.count(others.length, 'other person', 'other people')} beside`}`,
  };
}

/** By the rules of papers: bills go to the first that takes any, else to the first there is. */
export function addressesAnswer({ addresses }: Pick<Customer, 'addresses'>): Answer {
  const bills = addresses.find(({ purpose }) => purpose !== 'goods') ?? addresses[0];
  const goods = addresses.find(({ purpose }) => purpose !== 'bills');
  if (bills === undefined) return { strong: 'No address', rest: ' yet' };
  if (goods === undefined) return { strong: firstLine(bills), rest: ' for bills, none for goods' };
  if (bills === goods) return { strong: firstLine(bills), rest: ' for bills and goods' };
  return { strong: firstLine(bills), rest: ` for bills, ${firstLine(goods)} for goods` };
}

/** @param today YYYY-MM-DD */
export function taxAnswer(
  { exemption }: Pick<Customer, 'exemption'>,
  today: string,
  formatter: Pick<Formatter, 'day'>,
): Answer {
  if (exemption === null) return { strong: 'Tax', rest: ' is taken of them' };
  const { validUntil } = exemption;
  if (validUntil === null) return { strong: 'A tax exemption', rest: ', without an end' };
  return validUntil < today
    ? { strong: 'The tax exemption has ended', rest: ` on ${formatter.day(validUntil)}` }
    : { strong: 'A tax exemption', rest: ` until ${formatter.day(validUntil)}` };
}

/** @param validUntil a day before today */
export const expiredWords = (validUntil: string, formatter: Pick<Formatter, 'day'>): string =>
  `It ended on ${formatter.day(validUntil)}, so no quote goes out without tax. Ask them for a new one and set its last day, or take tax in their orders.`;

interface OrderTold {
  /** Of the order; its name where it has none yet. */
  readonly called: string;
  readonly enquiredOn: string | null;
}

/** @param orders the latest first */
export function ordersAnswer(
  orders: readonly OrderTold[],
  formatter: Pick<Formatter, 'count' | 'day'>,
): Answer {
  const [latest] = orders;
  if (latest === undefined) return { strong: 'No order', rest: ' yet' };
  const asked = latest.enquiredOn === null ? '' : `, asked on ${formatter.day(latest.enquiredOn)}`;
  return {
    strong: formatter.count(orders.length, 'order'),
    rest: `, ${orders.length === 1 ? '' : 'the last '}${latest.called}${asked}`,
  };
}

/** @returns what becomes of the orders of a customer who is removed; null where there are none */
export function removalWords(name: string, orders: readonly string[]): string | null {
  if (orders.length === 0) return null;
  const [stays, it] = orders.length === 1 ? ['stays', 'it'] : ['stay', 'each of them'];
  return `“${name}” is the customer of ${listed(orders)}. The ${orders.length === 1 ? 'order' : 'orders'} ${stays}, but no paper can be written for ${it} until you choose another customer there.`;
}

/** @returns what becomes of the orders that name a person who is removed; null where there are none */
export const personRemovalWords = (name: string, orders: readonly string[]): string | null =>
  orders.length === 0
    ? null
    : `${listed(orders)} ${orders.length === 1 ? 'names' : 'name'} “${name}”. Papers there are written to the first person who is left.`;

/** @returns the same of an address goods go to */
export const addressRemovalWords = (orders: readonly string[]): string | null =>
  orders.length === 0
    ? null
    : `${listed(orders)} ${orders.length === 1 ? 'goes' : 'go'} to this address; without it, to the first that takes goods.`;

/** Why what was typed reaches nobody; undefined where nothing speaks against it. */
export const emailCaution = (email: string): string | undefined =>
  email.trim() === '' || /^\S+@\S+$/.test(email.trim())
    ? undefined
    : 'An address for mail has an @ between two parts and no spaces. As it stands no message arrives.';

// Helpers

const firstLine = ({ text }: CustomerAddress): string => text.split('\n')[0]?.trim() ?? '';
