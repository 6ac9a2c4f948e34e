import { expect, it } from 'vitest';
import { largestLosses } from '@/lib/variances/largestLosses';
import { runResult } from '@/lib/variances/runResult';
import { clubFacts, clubStandard, noFacts } from '@/tests/fixtures/clubStandard';

const paid = { blank: () => null, sheet: () => null };

it('puts price and use of one thing together, the most first', () => {
  const facts = clubFacts({ reprints: 622 });
  // 4.93 and 7.15 of blanks, 0.58 and 0.71 of paper.
  expect(largestLosses(runResult({ body: clubStandard() }, { facts, paid, orderHours: [] }))).toEqual([
    { group: 'labour', minor: 1552 },
    { group: 'blanks', minor: 493 + 715 },
    { group: 'overhead', minor: 362 },
    { group: 'ink', minor: 142 },
    { group: 'paper', minor: 58 + 71 },
  ]);
});

it('names nothing where nothing cost more', () => {
  expect(
    largestLosses(runResult({ body: clubStandard() }, { facts: noFacts, paid, orderHours: [] })),
  ).toEqual([]);
});
