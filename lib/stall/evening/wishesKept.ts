import type { DayCount } from '@/lib/stall/count/dayCount';
import { mostEntries } from '@/shared/limits';
import { dayCloseSchema } from '@/shared/schemas/stallPapers';

interface WishesKept {
  /** As a close keeps them, in their order. */
  readonly kept: DayCount['askedFor'];
  /** Times something was asked for whose words the close has no room for; they are counted under an empty text. */
  readonly withoutWords: number;
}

const MOST = mostEntries(dayCloseSchema, ['askedFor']);

/** @returns what was asked for and not there, as far as a close has room: those that came most often keep their words. */
export function wishesKept(askedFor: DayCount['askedFor']): WishesKept {
  if (askedFor.length <= MOST) return { kept: askedFor, withoutWords: 0 };
  const worded = askedFor.filter(({ words }) => words !== '');
  const often = new Set(worded.toSorted((one, other) => other.count - one.count).slice(0, MOST - 1));
  const sumOf = (all: DayCount['askedFor']) => all.reduce((sum, { count }) => sum + count, 0);
  return {
    kept: [
      ...worded.filter((one) => often.has(one)),
      { words: '', count: sumOf(askedFor.filter((one) => !often.has(one))) },
    ],
    withoutWords: sumOf(worded.filter((one) => !often.has(one))),
  };
}
