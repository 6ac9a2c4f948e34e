import { expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { besideWords } from '@/app/_words/stall/evening/resultWords';
import { springFairTap } from '@/lib/examples/springFairCount';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import { club } from '@/tests/fixtures/clubJob';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { fairAnswers, fairEvening, fairTaps } from '@/tests/lib/stall/evening/fairEvening';

const { units } = club().workshop;
const formatter = formatterFor({ units, locale: 'en-US', currency: 'USD' });

const evening = (wishes: number) => {
  const more = Array.from({ length: wishes }, (_, at): TappedEntry => {
    const count = 1000 + at;
    const tap = { what: 'asked', goods: null, words: `wish ${at}` } as const;
    const body = springFairTap('plan-1', { minute: 700, tap });
    return { id: `phone-${count}`, device: 'phonephone', count, at: 0, body };
  });
  return fairEvening(fairAnswers, fairPlan, [...fairTaps, ...more]);
};

it('tells in the evening how many wishes the close keeps without their words', () => {
  // Youth sizes and black shirts of the fair are asked for more than once: 997 of the others stay, 203 do not.
  const told = besideWords(evening(1200), formatter);
  expect(told.at(-1)).toBe(
    'Asked for and not here: the close keeps the 999 wishes that came most often in their words, and counts 203 others without.',
  );
  // 998 and those two are as many as it keeps.
  expect(besideWords(evening(998), formatter)).toEqual(besideWords(evening(0), formatter));
});
