import { expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { ownSizesWords } from '@/app/_words/stall/goodsWords';
import { club } from '@/tests/fixtures/clubJob';

const formatter = formatterFor(club().workshop);
const adults = { from: 'audience', audience: 'adults' } as const;
const ordered = [
  { size: 'M', pieces: 9 },
  { size: 'L', pieces: 28 },
];

it.each([
  [adults, 0, false, null],
  [{ ...adults, ordered }, 0, false, '“Adults, mixed”, counted like 50 pieces, blended with 37 ordered.'],
  [
    { ...adults, ordered },
    12,
    false,
    '“Adults, mixed”, counted like 50 pieces, blended with 37 ordered and 12 sold or missed at your own stalls.',
  ],
  [{ ...adults, ordered }, 0, true, '“Adults, mixed” alone: 37 ordered are left out.'],
] as const)('sizes of %o with %d of own stalls, left out %s', (mix, pieces, isLeftOut, words) => {
  const own = 'ordered' in mix ? { ...mix, ordered: [...mix.ordered] } : mix;
  expect(ownSizesWords(own, pieces, isLeftOut, formatter)).toBe(words);
});
