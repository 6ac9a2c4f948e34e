import { describe, expect, it } from 'vitest';
import type { PriceListBody } from '@/lib/papers/bodies/priceListPaper';
import type { FrozenItem } from '@/shared/schemas/priceList';
import { writtenPaper } from '@/tests/fixtures/orderPapers';
import { readPages } from '@/tests/fixtures/readPages';

const breakAt = (from: number, to: number | null, each: number) => ({
  from,
  to,
  each,
  leastAt: from,
  leastSize: 'M',
  leastMargin: 0.123,
});

const item: FrozenItem = {
  id: 'shirts',
  jobId: 'club',
  lineId: 'shirts',
  name: 'White shirts',
  says: 'Polyester, printed on the back',
  largestPrint: { widthMm: 203.2, heightMm: 254 },
  sizes: ['S', 'M', 'L', 'XL', '2XL'].map((size) => ({ size, upCharge: size === '2XL' ? 150 : 0 })),
  breaks: [breakAt(1, 9, 2400), breakAt(10, 23, 1900), breakAt(24, null, 1650)],
  selling: 'asListed',
  capOn: 'base',
  setUp: null,
  charges: [
    { kind: 'minimumOrder', name: '', amount: 3000 },
    { kind: 'placement', name: 'Chest badge', amount: 250 },
  ],
  targetMargin: 0.3,
  rates: [],
};

const body: PriceListBody = {
  version: {
    number: { count: 3, letter: 'A' },
    issuedOn: '2026-11-26',
    validUntil: '2027-02-24',
    currency: 'USD',
    taxMode: 'added',
    title: 'Club shirts 2027',
    from: 'Placeholder Press\n12 Sample Lane, Exampleton',
    notes: 'A proof is included.',
    leadTime: 'Ready in ten working days.',
    items: [item],
  },
  standing: 'inForce',
  page: 'letter',
  language: 'en',
  locale: 'en-US',
  length: 'in',
};

const read = async (version: Partial<PriceListBody['version']> = {}, changes: Partial<PriceListBody> = {}) =>
  readPages(
    (
      await writtenPaper({
        kind: 'priceList',
        body: { ...body, ...changes, version: { ...body.version, ...version } },
      })
    ).bytes,
  );

describe('a price list', () => {
  it('has every price under what it is for, and nothing of the maker’s own side', async () => {
    const { lines, text } = await read();
    for (const line of [
      'White shirts',
      '1 to 9 24.00',
      '10 to 23 19.00',
      'from 24 16.50',
      'Least order 30.00',
    ])
      expect(lines).toContain(line);
    expect(text).toContain('Polyester, printed on the back, up to 8 × 10 in');
    expect(text).toContain('Sizes: S to XL; 2XL + 1.50');
    expect(text).toContain('Chest badge, inside the price of a piece 2.50');
    expect(text).toContain('number 3A');
    expect(text).toContain('valid until February 24, 2027');
    expect(text).toContain('Prices are in USD; tax is added to them.');
    expect(text).toContain('Ready in ten working days.');
    expect(text).not.toMatch(/12\.3|0\.3\b|30 ?%/);
  });

  it('tells one price a size where it has one', async () => {
    const { lines } = await read({
      items: [{ ...item, selling: 'onePrice', breaks: [breakAt(1, null, 2000)] }],
    });
    // 20.00, and 1.50 more for the largest.
    expect(lines).toContain('S to XL 20.00');
    expect(lines).toContain('2XL 21.50');
  });

  it('tells small orders of a capped list by the sum they pay', async () => {
    const { lines, text } = await read({ items: [{ ...item, selling: 'capped' }] });
    // Ten cost 190.00, so that 8 pieces, at 24.00 each 192.00, and 9 pay that; 24 cost 396.00, so 21 to 23 pay that.
    for (const line of [
      '1 to 7 24.00 each',
      '8 to 9 190.00 together',
      '10 to 20 19.00 each',
      '21 to 23 396.00 together',
    ])
      expect(lines).toContain(line);
    expect(text).toContain('No order costs more than a larger one would.');
  });

  it('tells a start and a piece where set-up is apart', async () => {
    const { text } = await read({
      items: [{ ...item, selling: 'setUpApart', setUp: { start: 4500, each: 1250 } }],
    });
    expect(text).toContain('45.00 to start and 12.50 a piece');
    expect(text).not.toContain('24.00');
  });

  it('of which no paper is in force says so on its face, and a draft has no number', async () => {
    expect((await read({}, { standing: 'withdrawn' })).text).toContain(
      'Withdrawn: it is not in force any more.',
    );
    const draft = await read({}, { standing: 'draft' });
    expect(draft.text).toContain('Draft, not issued yet.');
    expect(draft.text).not.toContain('3A');
  });

  it('of twenty items goes over pages, each item with a price beneath it and each once', async () => {
    const items = Array.from({ length: 20 }, (_, at) => ({
      ...item,
      id: `i-${at}`,
      name: `Item ${at + 1}.`,
    }));
    const { lines, pages } = await read({ items });
    expect(pages.length).toBeGreaterThan(1);
    for (const { name } of items) expect(lines.filter((line) => line === name)).toHaveLength(1);
    for (const page of pages) {
      page.lines.forEach((line, at) => {
        if (/^Item \d+\.$/.test(line)) expect(page.lines[at + 3]).toBe('1 to 9 24.00');
      });
    }
  });
});
