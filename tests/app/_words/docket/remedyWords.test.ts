import { expect, it } from 'vitest';
import { remedyWords } from '@/app/_words/docket/remedyWords';
import { formatterFor } from '@/app/_words/formatter';
import { breaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import { clubWith } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

it('tells of earlier breaks which prices fall away, and that no other job is touched', () => {
  const input = clubWith({
    'job.lines.0.selling': 'asListed',
    'job.lines.0.breaks': [12, 14, 16],
    'job.lines.0.ownPrices': [
      { from: 12, each: 26 },
      { from: 14, each: 23.5 },
      { from: 16, each: 21.5 },
    ],
  });
  const remedy = breaksAnswer(input, grid, { lineId: 'shirts', quantities: [] })?.remedies.find(
    ({ kind }) => kind === 'shifted',
  );
  if (remedy === undefined) throw new Error('the list needs no cure');
  const { locale, currency } = input.workshop;
  const sizes = input.job.lines[0]?.quantities.map(({ size }) => size) ?? [];
  const format = { formatter: formatterFor(input.workshop), currency, locale, sizes };
  // 26 ÷ 2.50 = 10.4 and 23.50 ÷ 2 = 11.75 take the first two breaks.
  expect(remedyWords(remedy, null, 'shirt', format).says).toBe(
    'Your own prices 21.50 USD begin at 12 pieces; 2 dearer prices before them fall away. They hold for this line alone.',
  );
});
