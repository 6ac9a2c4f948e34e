import { describe, expect, it } from 'vitest';
import type { CarListBody } from '@/lib/papers/bodies/carListPaper';
import type { StallPricesBody } from '@/lib/papers/bodies/stallPricesPaper';
import { paperOf } from '@/lib/papers/paperOf';
import { labelsFor } from '@/lib/papers/words/labelsFor';
import { priceRows } from '@/lib/stall/prices/priceRows';
import { writtenPaper } from '@/tests/fixtures/orderPapers';
import { readPages } from '@/tests/fixtures/readPages';
import { fairPlan } from '@/tests/fixtures/stallPlan';

const prices: StallPricesBody = {
  page: 'a4',
  language: 'en',
  locale: 'en-US',
  currency: 'USD',
  seller: { name: 'Placeholder Press', tagline: 'pictures pressed into the cloth' },
  taxMode: 'inside',
  fromMinute: null,
  rows: priceRows(
    fairPlan.ranges,
    fairPlan.goods.map(({ price, ...goods }) => ({ ...goods, minor: price })),
  ),
  sets: [{ name: 'Two shirts', pieces: 2, sizes: ['S', 'M', 'L', 'XL'], minor: 5000, rangeIds: ['shirts'] }],
  offersOrders: true,
};
const blockOf = (kind: 'tableList' | 'priceCards', change: Partial<StallPricesBody> = {}) =>
  paperOf({ kind, body: { ...prices, ...change } }, labelsFor('en', [])).blocks[0];
const read = async (kind: 'tableList' | 'priceCards', change: Partial<StallPricesBody> = {}) =>
  readPages((await writtenPaper({ kind, body: { ...prices, ...change } })).bytes);
const plain = (text: string) => text.replaceAll(/[\u2068\u2069]/g, '');

describe('the list on the table', () => {
  it('says each price once, with its sizes and designs, and offers beneath', () => {
    const block = blockOf('tableList');
    if (block?.kind !== 'prices') throw new Error('no prices');
    expect(
      block.rows.map(({ what, under, figure, isOffer }) => [plain(what), plain(under), figure, isOffer]),
    ).toEqual([
      ['Shirts, S to XL', 'Fern, Lighthouse, Otter, Star Map', '28', false],
      ['Shirts, 2XL, 3XL', 'the same 4 designs', '31', false],
      ['Mugs', 'Fern, Otter, Star Map', '16', false],
      ['Two shirts, S to XL', 'Shirts, any 2 designs', '50', true],
    ]);
  });

  it.each(['a4', 'letter'] as const)(
    'stands on one page of %s, its prices large and its tax told once',
    async (page) => {
      const { pages, text } = await read('tableList', { page });
      expect(pages).toHaveLength(1);
      const sizeOf = (words: string) => pages[0]?.texts.find((one) => one.text === words)?.size ?? 0;
      for (const figure of ['28', '31', '16', '50']) expect(sizeOf(figure)).toBeGreaterThan(50);
      expect(text.match(/tax/g)).toHaveLength(1);
      expect(text).toContain('Prices are in USD; tax is inside. Cash or card.');
      expect(text).toContain('Not your size? Order it here, we post it.');
    },
  );

  it('of the last hour says from when it holds', async () => {
    const { text } = await read('tableList', { fromMinute: 960, offersOrders: false });
    expect(text).toMatch(/From 4:00\sPM/);
    expect(text).not.toContain('Order it here');
  });

  it('of many prices is set smaller before it takes a second page, and no price is lost', async () => {
    const [first] = prices.rows;
    if (first === undefined) throw new Error('no row');
    const rows = (count: number) =>
      Array.from({ length: count }, (_, at) => ({
        ...first,
        range: `Range ${at + 1}`,
        minor: 1000 + at * 100,
      }));
    expect((await read('tableList', { rows: rows(8) })).pages).toHaveLength(1);
    const many = await read('tableList', { rows: rows(40) });
    for (let at = 0; at < 40; at += 1) expect(many.text).toContain(`Range ${at + 1}`);
  });

  it.each([
    ['JPY', 'ja-JP', 12800, '12,800'],
    ['USD', 'en-US', 104250, '1,042.50'],
  ] as const)(
    'writes a price of %s in one line, however large there is room to write',
    async (currency, locale, minor, figure) => {
      const rows = prices.rows.slice(0, 1).map((row) => ({ ...row, minor }));
      const { pages } = await read('tableList', { currency, locale, rows, sets: [] });
      expect(pages[0]?.texts.map(({ text }) => text)).toContain(figure);
    },
  );

  it.each([...Array(20).keys()].map((at) => at + 16))(
    'of %i prices ends on a page that is not left near empty',
    async (count) => {
      const [first] = prices.rows;
      if (first === undefined) throw new Error('no row');
      const rows = Array.from({ length: count }, (_, at) => ({ ...first, range: `Range ${at + 1}.` }));
      const { pages } = await read('tableList', { rows, sets: [] });
      const rowsOf = (page: (typeof pages)[number] | undefined) =>
        page?.texts.filter(({ text }) => text.startsWith('Range')).length ?? 0;
      expect(rowsOf(pages.at(-1)) * 2).toBeGreaterThan(rowsOf(pages[0]));
    },
  );

  it('begins at the right in a language from the right, the names under the head', async () => {
    const { pages } = await read('tableList', { language: 'he' });
    const endOf = (words: string) => {
      const found = pages[0]?.texts.find(({ text }) => text.endsWith(words));
      return found === undefined ? 0 : found.x + found.width;
    };
    expect(endOf('Mugs')).toBeCloseTo(endOf('Press'), 0);
  });

  it('shows coins where a price has them', () => {
    const block = blockOf('tableList', {
      sets: [{ name: 'Pair', pieces: 2, sizes: null, minor: 4250, rangeIds: [] }],
    });
    expect(block?.kind === 'prices' ? block.rows.at(-1)?.figure : null).toBe('42.50');
    const yen = blockOf('tableList', { currency: 'JPY', locale: 'ja-JP' });
    expect(yen?.kind === 'prices' ? yen.rows[0]?.figure : null).toBe('2,800');
  });
});

describe('a set', () => {
  const mixed = { name: 'Two together', pieces: 2, sizes: null, minor: 4000, rangeIds: ['shirts', 'mugs'] };

  it('of several goods says which they are, on the list and on every card', () => {
    const list = blockOf('tableList', { sets: [mixed] });
    const last = list?.kind === 'prices' ? list.rows.at(-1) : undefined;
    expect([last?.what, plain(last?.under ?? '')]).toEqual(['Two together', 'any 2 of Shirts, Mugs']);
    const cards = blockOf('priceCards', { sets: [mixed] });
    if (cards?.kind !== 'priceCards') throw new Error('no cards');
    expect(cards.cards.map(({ lines }) => plain(lines.at(-1) ?? ''))).toEqual(
      Array.from({ length: 7 }, () => 'Two together, any 2 of Shirts, Mugs: 40'),
    );
  });

  it('of goods with one design is any of them', () => {
    const rows = prices.rows.map((row) => ({ ...row, designs: ['Fern'] }));
    const list = blockOf('tableList', { rows, sets: [{ ...mixed, rangeIds: ['mugs'] }] });
    const last = list?.kind === 'prices' ? list.rows.at(-1) : undefined;
    expect(plain(last?.under ?? '')).toBe('Mugs, any 2');
  });
});

describe('price cards', () => {
  it('are one a design, with the price that comes first and the others beneath', () => {
    const block = blockOf('priceCards');
    if (block?.kind !== 'priceCards') throw new Error('no cards');
    expect(block.cards.map(({ name, figure }) => `${name} ${figure}`)).toEqual([
      ...['Fern 28', 'Lighthouse 28', 'Otter 28', 'Star Map 28'],
      ...['Fern 16', 'Otter 16', 'Star Map 16'],
    ]);
    expect(block.cards[0]?.lines.map(plain)).toEqual([
      '2XL, 3XL: 31',
      'Two shirts, S to XL, any 2 designs: 50',
    ]);
    expect(block.cards[4]?.lines).toEqual([]);
  });

  it.each(['a4', 'letter'] as const)('stand eight on a page of %s, to be cut up whole', async (page) => {
    const { pages } = await read('priceCards', { page });
    expect(pages).toHaveLength(1);
    const names = pages[0]?.texts.filter(({ text }) =>
      ['Fern', 'Otter', 'Lighthouse', 'Star Map'].includes(text),
    );
    expect(names).toHaveLength(7);
  });

  it('say plus tax only where it comes on top', async () => {
    expect((await read('priceCards')).text).not.toContain('tax');
    expect((await read('priceCards', { taxMode: 'added' })).text.match(/plus tax/g)).toHaveLength(7);
  });

  it('have their price in one line', async () => {
    const rows = prices.rows.map((row) => ({ ...row, minor: 12800 }));
    const { pages } = await read('priceCards', { rows, currency: 'JPY', locale: 'ja-JP' });
    expect(pages[0]?.texts.filter(({ text }) => text === '12,800')).toHaveLength(7);
  });

  it('draw each cut once, for dashes over dashes are a whole line', async () => {
    const { pages } = await read('priceCards');
    const across = pages[0]?.across.map((wide) => Math.round(wide)) ?? [];
    // A page of 595.28 with 42 at each side: five cuts across for four rows, the last of one card; three upright ones a
    // row of two cards, two of one.
    expect(across.filter((wide) => wide === 511)).toHaveLength(4);
    expect(across.filter((wide) => wide === 256)).toHaveLength(1);
    expect(across.filter((wide) => wide === 0)).toHaveLength(3 * 3 + 2);
  });

  it('of the last hour say themselves from when they hold, for they are cut apart', () => {
    const footOf = (change: Partial<StallPricesBody>) => {
      const block = blockOf('priceCards', { fromMinute: 960, locale: 'en-GB', ...change });
      return block?.kind === 'priceCards' ? block.cards[0]?.foot : null;
    };
    expect(footOf({})).toBe('From 16:00');
    expect(footOf({ taxMode: 'added' })).toBe('From 16:00, plus tax');
  });

  it.each(['a4', 'letter'] as const)(
    'of names of sixty letters, three prices and two sets fill their pages of %s',
    async (page) => {
      const named = (name: string) =>
        `${name} at the sea wall with three herring gulls and a lighthouse`.slice(0, 60);
      const designs = ['Fern', 'Otter', 'Heron', 'Moth', 'Gull', 'Star'].map(named);
      const [first] = prices.rows;
      if (first === undefined) throw new Error('no row');
      const rows = [2800, 3150, 2500].map((minor, at) => ({
        ...{ ...first, designs, minor },
        sizes: [`Grown ${at}`, `Youth ${at}`],
      }));
      const sets = ['A pair for two who go together', 'A pair for one who cannot choose'].map((name) => ({
        ...{ name, pieces: 2, sizes: null, minor: 5000 },
        rangeIds: ['shirts'],
      }));
      const { pages, text } = await read('priceCards', { rows, sets, page });
      expect(pages).toHaveLength(1);
      expect(text.match(/31\.50/g)).toHaveLength(6);
      expect(Math.min(...(pages[0]?.texts.map(({ size }) => size) ?? []))).toBeGreaterThanOrEqual(8);
    },
  );

  it('stand whole however long a name is', async () => {
    const design = 'A most uncommonly long name of a picture of a lighthouse '.repeat(4).trim();
    const rows = [{ ...prices.rows[0], designs: [design] }] as StallPricesBody['rows'];
    const { text } = await read('priceCards', { rows });
    expect(text.match(/lighthouse/g)).toHaveLength(4);
  });
});

describe('the list for the car', () => {
  const body: CarListBody = {
    page: 'a4',
    language: 'en',
    locale: 'en-US',
    currency: 'USD',
    workshop: 'Placeholder Press',
    name: 'Exampleton Spring Fair',
    place: 'Market Green',
    days: ['2026-12-19'],
    ranges: [
      {
        name: 'Shirts',
        sizes: ['S', 'M', 'L'],
        designs: [
          { name: 'Fern', bring: [4, 8, 9] },
          { name: 'Otter', bring: [3, 0, 7] },
        ],
      },
      { name: 'Mugs', sizes: [''], designs: [{ name: 'Fern', bring: [12] }] },
    ],
    takeAlong: ['Tin with the float', 'Card reader, charged'],
    float: [
      { minor: 1000, count: 7 },
      { minor: 100, count: 20 },
    ],
  };

  it.each(['a4', 'letter'] as const)('stands on one page of %s with what to tick off', async (page) => {
    const { pages, text } = await readPages(
      (await writtenPaper({ kind: 'carList', body: { ...body, page } })).bytes,
    );
    expect(pages).toHaveLength(1);
    // 21 Fern and 10 Otter, 12 mugs; 70 and 20 in the tin.
    for (const words of ['Shirts: 31', 'Mugs: 12', '43', '7 × 10', '20 × 1', '90.00', 'Card reader, charged'])
      expect(text).toContain(words);
  });

  it.each(['a4', 'letter'] as const)('breaks no count of twelve sizes on %s', async (page) => {
    const sizes = ['XS', 'S', 'M', 'L', 'XL', '2XL', '3XL', '4XL', '5XL', 'Youth S', 'Youth M', 'Youth L'];
    // 10 to 21: twelve counts of two digits, 186 in all.
    const bring = sizes.map((_, at) => at + 10);
    const ranges = [{ name: 'Shirts', sizes, designs: [{ name: 'Fern', bring }] }];
    const { lines } = await readPages(
      (await writtenPaper({ kind: 'carList', body: { ...body, ranges, page } })).bytes,
    );
    expect(lines).toContain(`Fern ${bring.join(' ')} 186`);
  });

  it('parts sizes that find no room beside each other, with their heads, rather than break a count', async () => {
    const sizes = Array.from({ length: 24 }, (_, at) => `S${at + 1}`);
    const bring = sizes.map((_, at) => at + 100);
    const ranges = [{ name: 'Shirts', sizes, designs: [{ name: 'Fern', bring }] }];
    const { text, lines } = await readPages(
      (await writtenPaper({ kind: 'carList', body: { ...body, ranges } })).bytes,
    );
    for (const count of bring) expect(text).toMatch(new RegExp(`\\b${count}\\b`));
    // 100 to 123.
    expect(lines.filter((line) => line.startsWith('Fern')).at(-1)).toMatch(/123 2,676$/);
    expect(lines.filter((line) => line.startsWith('Fern')).length).toBeGreaterThan(1);
  });

  it('names its sizes again on each page of a range that is longer than one', async () => {
    const designs = Array.from({ length: 90 }, (_, at) => ({ name: `Picture ${at}.`, bring: [4, 8] }));
    const ranges = [{ name: 'Shirts', sizes: ['Small', 'Large'], designs }];
    const { pages } = await readPages(
      (await writtenPaper({ kind: 'carList', body: { ...body, ranges } })).bytes,
    );
    const naming = pages.filter(({ lines }) => lines.some((line) => line.startsWith('Picture')));
    expect(naming.length).toBeGreaterThan(1);
    for (const { lines } of naming) expect(lines).toContain('Small Large in all');
  });

  it('has nothing to tick where none is brought', () => {
    const { blocks } = paperOf({ kind: 'carList', body }, labelsFor('en', []));
    const shirts = blocks.find((block) => block.kind === 'step');
    expect(shirts?.kind === 'step' ? shirts.grid?.rows[1] : null).toEqual({
      name: 'Otter',
      ticks: ['3', '', '7'],
      last: '10',
    });
  });

  it('tells no price and no cost of what is brought', async () => {
    const { text } = await readPages(
      (await writtenPaper({ kind: 'carList', body: { ...body, float: [] } })).bytes,
    );
    expect(text).not.toMatch(/28|USD|\.\d\d/);
  });
});
