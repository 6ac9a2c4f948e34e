import type { Formatter } from '@/app/_words/formatter';

/** What a fold of what was noted is called. */
export const notedNames = {
  next: 'Noted for next time',
  whole: 'What was noted',
  see: 'See that day',
} as const;

/** @returns whose notes stand at the head of the next plan: “Noted at Spring fair, Sat 24 Apr” */
export const notedAtWords = (title: string, day: string): string => `Noted at ${title}, ${day}`;

/** @returns “3 more” */
export const moreNotedWords = (more: number): string => `${more} more`;

/** @returns what stands beside a number to bring: “9 noted” */
export const notedBringWords = (next: number): string => `${next} noted`;

/** @returns what a day says of goods that were gone: “Otter L, 9 next time for 7” */
export const nextTimeWords = (
  name: string,
  { next, brought }: { readonly next: number; readonly brought: number },
): string => `${name}, ${next} next time for ${brought}`;

/** @returns what a day says of what was not along: “youth sizes, asked for 6 times” */
export const askedForWords = (
  { words, count: times }: { readonly words: string; readonly count: number },
  count: Formatter['count'],
): string => `${words === '' ? 'Something else' : words}, asked for ${count(times, 'time')}`;
