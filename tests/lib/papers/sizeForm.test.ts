import { describe, expect, it } from 'vitest';
import type { SizeFormBody } from '@/lib/papers/bodies/sizeFormPaper';
import { seller, writtenPaper } from '@/tests/fixtures/orderPapers';
import { readPages } from '@/tests/fixtures/readPages';

const empty = { name: '', size: '', number: '' };
const body: SizeFormBody = {
  page: 'a4',
  language: 'en',
  seller,
  title: 'Ramblers Club shirts, Club shirt',
  sizes: ['S', 'M', 'L', 'XL', '2XL', '3XL'],
  hasNumbers: true,
  rows: [
    { name: 'Ana Silva', size: 'M', number: '7' },
    { ...empty, name: 'Bo' },
    ...Array.from({ length: 38 }, () => empty),
  ],
};

const read = async (form: Partial<SizeFormBody> = {}) =>
  readPages((await writtenPaper({ kind: 'sizeForm', body: { ...body, ...form } })).bytes);

describe('a size form', () => {
  it('has the sizes to ring in every row that has none yet, and what is known already', async () => {
    const { text } = await read();
    expect(text).toContain('One line for each person. Ring the size.');
    expect(text).toContain('Ana Silva M 7');
    expect(text).toContain('Bo S · M · L · XL · 2XL · 3XL');
    expect(text.match(/S · M · L · XL · 2XL · 3XL/g)).toHaveLength(39);
  });

  it('asks again, in its row, for a size that is none of the goods', async () => {
    const rows = [
      { name: 'Cy', size: 'Q', number: '8' },
      { name: 'Dee', size: '2 XL', number: '9' },
    ];
    const { text } = await read({ rows });
    expect(text).toContain('Cy S · M · L · XL · 2XL · 3XL 8');
    expect(text).toContain('“Q” is none of the sizes.');
    expect(text).toContain('Dee S · M · L · XL · 2XL · 3XL 9');
    expect(text).toContain('“2 XL” is none of the sizes.');
    // Where sizes are written and not ringed the place is free.
    const sizes = ['3–4 years', '5–6 years', '7–8 years', '9–11 years', '12–13 years'];
    const written = await read({ sizes, rows });
    expect(written.text).toContain('“Q” is none of the sizes.');
    expect(written.lines).toContain('Cy 8');
  });

  it('leaves a size as it was told where it is one of the goods, or none of them is known', async () => {
    const rows = [{ name: 'Cy', size: 'Q', number: '8' }];
    expect((await read({ rows: [{ name: 'Cy', size: ' XL', number: '8' }] })).text).toContain('Cy XL 8');
    const { text } = await read({ sizes: [], rows });
    expect(text).toContain('Cy Q 8');
    expect(text).not.toContain('none of the sizes');
  });

  it('goes on over pages under the same head, with room to write in each row', async () => {
    const { pages } = await read();
    expect(pages.length).toBeGreaterThan(1);
    for (const { texts } of pages) {
      expect(texts.filter(({ text }) => text === 'number')).toHaveLength(1);
      const rows = texts.filter(({ text }) => text.startsWith('S · M')).map(({ y }) => y);
      const apart = rows.slice(1).map((y, at) => (rows[at] ?? 0) - y);
      // 24 points are 8.5 mm: ruled paper for schools has 7.1 to 8.7 mm (common practice).
      expect(Math.min(...apart)).toBeGreaterThan(23.99);
    }
  });

  it('leaves the column of numbers out where no piece bears one', async () => {
    const { pages } = await read({ hasNumbers: false });
    expect(pages.flatMap(({ texts }) => texts).filter(({ text }) => text === 'number')).toEqual([]);
  });

  it('names more sizes than fit into a row once, above', async () => {
    const sizes = ['3–4 years', '5–6 years', '7–8 years', '9–11 years', '12–13 years'];
    const { text } = await read({ sizes });
    expect(text).toContain(
      'Write one of these sizes: 3–4 years, 5–6 years, 7–8 years, 9–11 years, 12–13 years.',
    );
    expect(text.match(/9–11 years/g)).toHaveLength(1);
  });

  it('asks nothing of the size where there is but one', async () => {
    const { text } = await read({ sizes: ['11 oz'] });
    expect(text).toContain('One line for each person.');
    expect(text).not.toContain('Ring');
    expect(text).toContain('Bo 11 oz');
  });
});
