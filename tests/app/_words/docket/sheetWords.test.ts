import { expect, it } from 'vitest';
import { leastSheetsWords, sharedLookWords } from '@/app/_words/docket/sheetWords';
import { formatterFor } from '@/app/_words/formatter';
import { club } from '@/tests/fixtures/clubJob';

const { locale, units, currency } = club().workshop;
const formatter = formatterFor({ locale, units, currency, nameOf: () => null });

it.each([
  [true, 0, null, 'Looking for fewer sheets…'],
  [true, 1, null, '1 sheet fewer found. Still looking…'],
  [false, 2, null, '2 sheets fewer found; the price follows.'],
  [false, 0, null, 'No layout with fewer sheets was found.'],
  [true, 0, 0, 'Looking for less roll…'],
  [false, 0, 250, '0.25 m less roll found; the price follows.'],
  [false, 0, 0, 'No layout with less roll was found.'],
] as const)(
  'a look at shared sheets (looking: %s, %d sheets, %s mm less) is told: %s',
  (isLooking, sheets, rollMm, words) => {
    expect(sharedLookWords({ isLooking, spared: { sheets, rollMm }, drawn: [] }, formatter)).toBe(words);
  },
);

it.each([
  [14, 14, null, 'no layout needs fewer'],
  [14, 13, null, '13 is the least possible'],
  [15, 13, 14, '13 is the least possible, 14 where sheets are cut straight through'],
  [14, 13, 14, 'none that is cut straight through needs fewer; 13 is the least possible'],
  // Fewer than straight cuts can do: their bound says nothing of it.
  [13, 12, 14, '12 is the least possible'],
])('of %d sheets, with the bounds %d and %s, it is told: %s', (count, lowerBound, guillotineBound, words) => {
  expect(leastSheetsWords({ count, lowerBound, guillotineBound }, formatter)).toBe(words);
});
