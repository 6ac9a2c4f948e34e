import { describe, expect, it } from 'vitest';
import type { Quote } from '@/shared/schemas/orderPapers';
import { clubDelivery, clubQuote, writtenPaper } from '@/tests/fixtures/orderPapers';
import { readPages } from '@/tests/fixtures/readPages';

/** So many rows, each of a price of its own, at most 50 of one kind of goods. */
function goodsOf(rows: number): Quote['goods'] {
  const one = (from: number, count: number) => ({
    jobId: 'job',
    lineId: `line-${from}`,
    name: `Kind ${from / 50 + 1}`,
    says: '',
    shape: 'other' as const,
    prints: [],
    sizes: Array.from({ length: count }, (_, at) => ({
      size: `Row-${from + at + 1}.`,
      quantity: 1,
      each: 100 + from + at,
      total: 100 + from + at,
    })),
    start: 0,
  });
  const kinds = Math.ceil(rows / 50);
  return Array.from({ length: kinds }, (_, kind) => one(kind * 50, Math.min(50, rows - kind * 50)));
}

const quoteOf = async (rows: number, page: 'a4' | 'letter' = 'a4') =>
  readPages(
    (await writtenPaper({ kind: 'quote', body: { ...clubQuote, page, goods: goodsOf(rows), charges: [] } }))
      .bytes,
  );

const isRow = (line: string) => /^Row-\d+\. /.test(line);

describe('a table', () => {
  it.each([1, 40, 200])('of %i rows has each once, under a head on every page', async (rows) => {
    const { lines, pages } = await quoteOf(rows);
    for (let row = 1; row <= rows; row += 1) {
      // 1.00, then a cent more each.
      const price = ((99 + row) / 100).toFixed(2);
      expect(lines.filter((line) => line.startsWith(`Row-${row}. `))).toEqual([
        `Row-${row}. 1 ${price} ${price}`,
      ]);
    }
    for (const { lines: onPage } of pages) {
      const first = onPage.findIndex(isRow);
      if (first < 0) continue;
      expect(onPage.slice(0, first).some((line) => line.endsWith('pieces each USD'))).toBe(true);
    }
    expect(pages.length).toBeGreaterThanOrEqual(rows / 60);
  });

  it.each(['a4', 'letter'] as const)(
    'never has its sums without a row above them, wherever the page ends (%s)',
    async (page) => {
      let broken = 0;
      for (let rows = 16; rows <= 32; rows += 2) {
        const { pages } = await quoteOf(rows, page);
        const last = pages.find(({ lines }) => lines.some((line) => line.includes('without tax')));
        const sums = last?.lines.findIndex((line) => line.includes('without tax')) ?? -1;
        expect(last?.lines.slice(0, sums).some(isRow), `${rows} rows`).toBe(true);
        expect(
          last?.lines.some((line) => line.startsWith('Total')),
          `${rows} rows`,
        ).toBe(true);
        if (last !== pages[0]) broken += 1;
      }
      // Otherwise no page ended among these.
      expect(broken).toBeGreaterThan(3);
    },
  );

  it('begins no kind of goods at the foot of a page without a row of it', async () => {
    const { pages } = await quoteOf(200);
    for (const { lines } of pages) {
      lines.forEach((line, at) => {
        if (/^Kind \d+$/.test(line)) expect(lines[at + 1]).toMatch(/^Row-/);
      });
    }
  });

  it('of 500 people has each once', async () => {
    const people = Array.from({ length: 500 }, (_, at) => ({
      name: `Person-${at + 1}.`,
      number: String(at),
      size: 'M',
      goods: clubDelivery.goods[0]?.name ?? '',
    }));
    const { bytes } = await writtenPaper({ kind: 'deliveryNote', body: { ...clubDelivery, people } });
    const { text } = await readPages(bytes);
    for (const { name } of people) expect(text.split(name)).toHaveLength(2);
  });
});

describe('what is to be signed', () => {
  const long = (count: number) => ({
    ...clubQuote,
    terms: Array.from({ length: count }, (_, at) => ({
      heading: `Term ${at + 1}`,
      text: 'What both sides hold to, said in a sentence or two, so that each of them knows what comes next.',
    })),
  });

  it.each(['a4', 'letter'] as const)(
    'stands on one page where it is a little too long for it (%s)',
    async (page) => {
      // As many terms as the starter's, in a quote with a choice of three: some 150 points too many.
      const { bytes, pages: count } = await writtenPaper({ kind: 'quote', body: { ...long(12), page } });
      const { pages, text } = await readPages(bytes);
      expect([pages.length, count]).toEqual([1, 1]);
      expect(text).toContain('accepted, name signature date');
      expect(text).toContain('Term 12');
      // Closer than usual: a title has 24 points else.
      expect(pages[0]?.texts.map(({ size }) => size)).not.toContain(24);
      for (const { size, text: letters } of pages[0]?.texts ?? [])
        expect(size, letters).toBeGreaterThanOrEqual(8 - 0.001);
    },
  );

  it('is set as large as ever where it takes two pages even so', async () => {
    const { pages } = await readPages((await writtenPaper({ kind: 'quote', body: long(30) })).bytes);
    expect(pages).toHaveLength(2);
    // The title's usual size, and that of terms.
    const sizes = pages.flatMap(({ texts }) => texts.map(({ size }) => size));
    expect(sizes).toContain(24);
    expect(sizes).toContain(9);
  });

  it('leaves a quote that fits as it is', async () => {
    const { pages } = await readPages((await writtenPaper({ kind: 'quote', body: long(3) })).bytes);
    expect(pages).toHaveLength(1);
    expect(pages[0]?.texts.map(({ size }) => size)).toContain(24);
  });
});

describe('every page', () => {
  it('says which of all it is, and of which paper', async () => {
    const { pages } = await quoteOf(200);
    pages.forEach(({ lines }, at) => {
      expect(lines.at(-1)).toBe(`Quote 26-014A, version 1 page ${at + 1} of ${pages.length}`);
    });
  });
});

describe('a paper in a language from the right', () => {
  const words = [
    { language: 'he', key: 'quote', text: 'הצעת מחיר' },
    { language: 'he', key: 'each', text: 'מחיר' },
  ];

  it('begins at the right, with its figures at the left', async () => {
    const body = { ...clubQuote, language: 'he', locale: 'he-IL' };
    const { bytes } = await writtenPaper({ kind: 'quote', body }, { words });
    const { pages, preferences } = await readPages(bytes);
    const texts = pages[0]?.texts ?? [];
    const title = texts.filter(({ size }) => size === 24);
    expect(Math.max(...title.map(({ x, width }) => x + width))).toBeCloseTo(595.28 - 42, 0);
    expect(texts.find(({ text }) => text === '608.00')?.x).toBeCloseTo(42, 0);
    expect(preferences).toMatchObject({ Direction: 'R2L' });
  });
});

describe('the file of a paper', () => {
  it('is the same byte for byte, however often it is written', async () => {
    const write = async () => (await writtenPaper({ kind: 'quote', body: clubQuote })).bytes;
    expect(Buffer.compare(await write(), await write())).toBe(0);
  });

  it('is small: type and lines, no pictures', async () => {
    // Two faces of some 60 letters at about 150 bytes each, and the pages.
    expect((await writtenPaper({ kind: 'quote', body: clubQuote })).bytes.length).toBeLessThan(40_000);
  });
});
