import type { Customer } from '@/shared/schemas/customer';
import type { Order } from '@/shared/schemas/order';

/** By what a customer, and the people its orders name, would be known again. */
interface PersonalTexts {
  /** Of the customer itself: told wherever else it stands. */
  readonly ofCustomer: readonly string[];
  /** With the names of pieces, which are looked for in the customer's own orders and jobs alone. */
  readonly all: readonly string[];
  /** First names and surnames: alone they may mean somebody else, so they are told and not taken out. */
  readonly words: readonly string[];
}

export function personalTexts(customer: Customer, orders: readonly Order[]): PersonalTexts {
  const ofCustomer = telling([
    customer.name,
    customer.taxNumber,
    customer.exemption?.number ?? '',
    ...customer.people.flatMap(({ name, email, phone }) => [name, email, phone]),
    // A town alone tells nobody.
    ...customer.addresses.flatMap(({ text }) => text.split('\n').filter((line) => /\d/.test(line))),
  ]);
  const named = orders.flatMap(({ lines }) => lines.flatMap(({ names }) => names.map(({ name }) => name)));
  const names = [customer.name, ...customer.people.map(({ name }) => name), ...named];
  const words = names.flatMap((name) => name.match(/\p{L}[\p{L}\p{M}’'-]*/gu) ?? []);
  return { ofCustomer, all: telling([...ofCustomer, ...named]), words: telling(words) };
}

/** Two letters stand in too many words to tell anything. */
const SHORTEST = 3;

const telling = (texts: readonly string[]): readonly string[] => [
  ...new Set(texts.map((text) => text.trim()).filter((text) => text.length >= SHORTEST)),
];
