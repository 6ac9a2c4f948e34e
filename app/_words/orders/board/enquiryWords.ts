import { spelledNumber } from '@/app/_words/spelledNumber';

/** @returns who a typed name is: one that is known, several of the name, or somebody new. */
export function whoWords(known: number, orders: number): string {
  if (known === 0) return 'A new customer.';
  if (known > 1)
    return `${spelledNumber(known)} customers are called so; the one who ordered last is taken. The order can name another.`;
  return orders === 0
    ? 'A customer of yours.'
    : `A customer of yours, with ${orders} ${orders === 1 ? 'order' : 'orders'}.`;
}

export const pastDayWords = (day: string): string =>
  `${day} is past. Choose a day from today on, or leave it out.`;

export const tooLongWords = (over: number, longest: number): string =>
  `${over} ${over === 1 ? 'letter' : 'letters'} too long: ${longest} fit here.`;

export const NOT_TAKEN =
  'It could not be noted. What you typed stands here still: look at it, and press again.';
