import { expect, test } from 'vitest';
import { priced } from '@/tests/e2e/harness/docketPage';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';
import { savedPaper } from '@/tests/e2e/harness/savedPaper';

/** What is in no money: amounts with two digits behind the mark, and words of costs. */
const MONEY = /\d\.\d\d\b(?! in)|USD|margin|profit|full cost/i;

const BENCH = { name: 'Save as PDF of the job sheet' } as const;
const OWNER = { name: 'Save as PDF of the costs' } as const;

test.each([
  // The worked example: 37 shirts, 45 blanks with 8 spares, 53 sheets; full cost 411.79, profit 288.37.
  [
    'club-order',
    'Ramblers Club shirts',
    [
      'Print 53 sheets',
      '37 of Back picture, 1 a sheet',
      '10 of Chest badge, 4 a sheet',
      '45 in all, 8 spares',
      '390 °F · 55 s',
      'back, as seen',
      'Club crest',
      'Same fault twice running',
    ],
    ['411.79', '288.37', '40.5 %'],
  ],
  ['fair-mugs', 'Spring Fair mugs', ['Fern mug', 'Otter mug', 'Star Map mug', 'Every print:'], []],
  [
    'fair-shirts',
    'Spring Fair shirts',
    // 96 good ones; four designs on one blank share its spares: S 2, M 2, L 3, XL 2, 2XL 1, 3XL 1 are the cheapest that
    // reach 75 % where 0.97 × 0.99 of the blanks end good, and reach 77.8 %.
    ['Fern shirt', 'Lighthouse shirt', 'Star Map shirt', '107 in all, 11 spares', '78 % sure'],
    [],
  ],
])(
  'the sheet of %s is saved as a page for the bench, and its costs as another file',
  async (id, name, told, costs) => {
    const page = await openPage({ path: `/jobs/${id}/sheet` });
    const bench = await savedPaper(page, page.getByRole('button', BENCH));
    expect(bench.name).toContain(name);
    expect(bench.pages.map(({ size, isInside }) => [size, isInside])).toEqual([['612 × 792', true]]);
    const text = bench.text.replaceAll(/\s+/g, ' ');
    for (const words of [...told, 'Check, fold, pack', 'good / scrapped, and why', 'packed by, date'])
      expect(text).toContain(words);
    expect(text).not.toMatch(MONEY);
    const owner = await savedPaper(page, page.getByRole('button', OWNER));
    expect(owner.pages.map(({ size, isInside }) => [size, isInside])).toEqual([['612 × 792', true]]);
    for (const words of ['For you alone', name, 'Full cost', ...costs]) expect(owner.text).toContain(words);
  },
);

test.each([1280, 390])('the sheet is looked at before it is saved, %d wide', async (width) => {
  const page = await openPage({ path: '/jobs/club-order', width });
  await page.getByRole('link', { name: 'Job sheet' }).first().click();
  await page.getByRole('article', { name: /^For you alone/ }).waitFor();
  await page.getByRole('button', BENCH).and(page.locator(':not([aria-disabled])')).waitFor();
  await looksRight(page, `job-sheet-${width}`);
  await page.getByRole('link', { name: 'Back to Ramblers Club shirts' }).click();
  await priced(page);
});
