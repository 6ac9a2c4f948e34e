import { expect, test } from 'vitest';
import { priced } from '@/tests/e2e/harness/docketPage';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';
import { printedPages } from '@/tests/e2e/harness/printedPages';

const papers = ['A4', 'Letter'] as const;

/** What is in no money: amounts with two digits behind the mark, and words of costs. */
const MONEY = /\d\.\d\d\b(?! in)|USD|margin|profit|full cost/i;

test('a docket prints as its job sheet: a page for the bench, and a page of costs that is the owner’s', async () => {
  const page = await openPage({ path: '/jobs/club-order' });
  await priced(page);
  // The code of the sheet comes after the price: until then the paper says that it is still being made.
  await expect.poll(async () => (await printedPages(page, 'A4')).pages.length).toBe(2);
  for (const paper of papers) {
    const { title, pages } = await printedPages(page, paper);
    expect(title).toBe('Ramblers Club shirts');
    expect(pages).toHaveLength(2);
    expect(pages.every(({ isInside }) => isInside)).toBe(true);
    const [bench, owner] = pages;
    // The worked example: 37 shirts, 45 blanks with 8 spares, 53 sheets; full cost 411.79, profit 288.37.
    for (const told of [
      'Job sheet: Ramblers Club shirts',
      'Print 53 sheets',
      '37 of Back picture, 1 a sheet',
      '10 of Chest badge, 4 a sheet',
      '45 in all, 8 spares',
      '390 °F · 55 s',
      'Same fault twice running',
      'good / scrapped, and why',
    ])
      expect(bench?.text.replaceAll(/\s+/g, ' ')).toContain(told);
    expect(bench?.text).not.toMatch(MONEY);
    for (const told of ['For you alone', '411.79', '288.37', '40.5 %']) expect(owner?.text).toContain(told);
    for (const { text } of pages) expect(text).not.toMatch(/undo|take it back|workshop/i);
  }
  // On the screen the docket is what it was.
  await priced(page);
});

test.each([
  ['club-order', 'Ramblers Club shirts', ['Chest badge', 'mirrored on paper', 'Club crest']],
  ['fair-mugs', 'Spring Fair mugs', ['Fern mug', 'Otter mug', 'Star Map mug', 'Every print:']],
  ['fair-shirts', 'Spring Fair shirts', ['Fern shirt', 'Lighthouse shirt', 'Star Map shirt', '124 in all']],
])(
  'the sheet of %s has one page for the bench and one for the owner on both papers',
  async (id, name, told) => {
    const page = await openPage({ path: `/jobs/${id}/sheet` });
    await page.getByRole('article', { name: 'For you alone' }).waitFor();
    for (const paper of papers) {
      const { title, pages } = await printedPages(page, paper);
      expect(title).toBe(name);
      expect(pages).toHaveLength(2);
      expect(pages.every(({ isInside }) => isInside)).toBe(true);
      const bench = pages[0]?.text.replaceAll(/\s+/g, ' ');
      for (const words of [...told, 'Job sheet', 'Check, fold, pack', 'packed by, date'])
        expect(bench).toContain(words);
      expect(bench).not.toMatch(MONEY);
      expect(bench).not.toMatch(/print or save|back to|undo/i);
      expect(pages[1]?.text).toContain('For you alone');
    }
  },
);

test.each([1280, 390])('the sheet is looked at before it is printed, %d wide', async (width) => {
  const page = await openPage({ path: '/jobs/club-order', width });
  await page.getByRole('link', { name: 'Job sheet' }).first().click();
  await page.getByRole('article', { name: 'For you alone' }).waitFor();
  await looksRight(page, `job-sheet-${width}`);
  await page.getByRole('link', { name: 'Back to Ramblers Club shirts' }).click();
  await priced(page);
});
