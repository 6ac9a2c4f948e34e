import { expect, it } from 'vitest';
import { effectWords, remedyWords } from '@/app/_words/docket/remedyWords';
import { formatterFor } from '@/app/_words/formatter';
import { breaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import { club } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

it('tells of earlier breaks which price falls away, and that orders would be sold at a loss', () => {
  const input = club();
  const remedy = breaksAnswer(input, grid, { lineId: 'shirts', quantities: [] })?.remedies.find(
    ({ kind }) => kind === 'shifted',
  );
  if (remedy === undefined) throw new Error('the list needs no cure');
  const { locale, currency } = input.workshop;
  const sizes = input.job.lines[0]?.quantities.map(({ size }) => size) ?? [];
  const format = { formatter: formatterFor(input.workshop), currency, locale, sizes };
  // 144.50 ÷ (144.50 − 34.50) = 1.3 takes the first break; 34.50 ÷ 11 = 3.1, 23.50 ÷ 5.50 = 4.3, 18 ÷ 2.50 = 7.2.
  expect(remedyWords(remedy, null, 'shirt', format).says).toContain(
    'Your own prices 34.50, 23.50, 18.00, 15.50 USD begin at 1, 3, 4, 7 pieces; 1 dearer price before them falls away.',
  );
  // Five shirts at 18.00 are 90.00, and cost about 133 in full.
  expect(effectWords(remedy, format)).toContain('Some of these orders would be sold under full cost.');
});
