import { describe, expect, it } from 'vitest';
import type { CareCards } from '@/lib/papers/bodies/careCard';
import { seller, writtenPaper } from '@/tests/fixtures/orderPapers';
import { readPages } from '@/tests/fixtures/readPages';

describe('care cards', () => {
  const cards = async (kinds: CareCards['cards'], page: 'a4' | 'letter', contact = seller.contact) => {
    const body = { language: 'en', page, seller: { ...seller, contact }, cards: kinds };
    return readPages((await writtenPaper({ kind: 'careCard', body })).bytes);
  };
  const shirts = (count: number) => Array.from({ length: count }, () => 'shirt' as const);
  const headings = ({ texts }: Awaited<ReturnType<typeof readPages>>['pages'][number]) =>
    texts.filter(({ text }) => text.startsWith('Caring for your'));

  it.each(['a4', 'letter'] as const)('of 40 shirts take five pages of %s, eight on each', async (page) => {
    const { pages } = await cards(shirts(40), page);
    expect(pages.map((one) => headings(one).length)).toEqual([8, 8, 8, 8, 8]);
    for (const { texts } of pages)
      for (const { size, text } of texts) expect(size, text).toBeGreaterThanOrEqual(8 - 0.001);
  });

  it.each(['a4', 'letter'] as const)(
    'are cut into rows of one height, down to the foot of %s',
    async (page) => {
      const { pages } = await cards(shirts(7), page);
      const [first] = pages;
      const rows = [...new Set(pages.flatMap(headings).map(({ y }) => y))];
      const apart = rows.slice(1).map((y, at) => (rows[at] ?? 0) - y);
      expect(apart).toHaveLength(3);
      // Four rows share what a page holds between its edges of 40 and 48 points.
      const each = ((first?.height ?? 0) - 40 - 48) / 4;
      for (const one of apart) expect(one).toBeCloseTo(each, 1);
    },
  );

  it('stand whole on a page where a long address leaves less room', async () => {
    const contact = Array.from({ length: 6 }, (_, at) => `Line ${at} of a long way to reach us`).join('\n');
    const { pages } = await cards(shirts(9), 'letter', contact);
    for (const one of pages)
      expect(one.texts.filter(({ text }) => text.includes('crack or peel'))).toHaveLength(
        headings(one).length,
      );
    expect(pages.flatMap(headings)).toHaveLength(9);
  });

  it('of little text stand closer', async () => {
    const { pages } = await cards([...shirts(4), ...Array.from({ length: 8 }, () => 'mug' as const)], 'a4');
    expect(pages).toHaveLength(1);
  });
});
