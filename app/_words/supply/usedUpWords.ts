import type { Formatter } from '@/app/_words/formatter';
import type { RateUse } from '@/lib/buying/rateUse';

/** Sentences around what jobs reckon with by a rate and no consumable stands for. */
export const usedUpWords = {
  /** @example 'Not on this list: Tape or sleeve 79, Mug box 36' */
  told: (uses: readonly RateUse[], formatter: Formatter): string =>
    `Not on this list: ${uses.map(({ name, quantity }) => `${name} ${formatter.number(quantity)}`).join('; ')}`,
  cost: (all: string): string => `about ${all} at your rates, in no sum here`,
  link: 'What is used up',
  isSetUp: (name: string): string => `${name} is on the list now. Its pack and who sells it:`,
} as const;

/** @example '79 lengths, 2.37 USD at your rate; no supplier set' */
export function rateUseWords({ thing, quantity, cost }: RateUse, formatter: Formatter): string {
  const [one, many] = units[thing];
  const counted = formatter.count(quantity, one, many);
  return `${counted}, ${formatter.money(cost)} at your rate; no supplier set`;
}

// Helpers

const units: Readonly<Record<RateUse['thing'], readonly [string, string]>> = {
  tape: ['length', 'lengths'],
  protectivePaper: ['sheet', 'sheets'],
  packaging: ['piece', 'pieces'],
  order: ['order', 'orders'],
};
