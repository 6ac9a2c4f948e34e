import { describe, expect, it } from 'vitest';
import { issuePriceList } from '@/lib/priceLists/issuePriceList';
import type { PriceList, PriceListItem } from '@/shared/schemas/priceList';
import { anItem, aVersion } from './aVersion';

const item: PriceListItem = {
  id: 'shirts',
  jobId: 'club-order',
  lineId: 'shirts',
  charges: [],
  ownAmounts: [],
};

const list = (fields: Partial<PriceList> = {}): PriceList => ({
  name: 'Shirts for clubs',
  from: 'Alex Placeholder',
  notes: 'White shirts',
  leadTime: 'Two weeks',
  validDays: 90,
  paper: 'a4',
  items: [item],
  versions: [],
  ...fields,
});

const frozen = (taxMode: 'added' | 'inside' = 'added') => ({ kind: 'frozen', taxMode, item: anItem() });
const issue = (of: PriceList, ...outcomes: readonly { readonly kind: string }[]) =>
  issuePriceList(of, outcomes, 'USD', '2026-11-25');

describe('a draft that is issued', () => {
  it('keeps its words, prices, day and validity as version 1', () => {
    // Five days of November, all of December and January, and 23 of February.
    expect(issue(list(), frozen())).toEqual({
      kind: 'issued',
      version: {
        number: 1,
        issuedOn: '2026-11-25',
        validUntil: '2027-02-23',
        currency: 'USD',
        taxMode: 'added',
        title: 'Shirts for clubs',
        from: 'Alex Placeholder',
        notes: 'White shirts',
        leadTime: 'Two weeks',
        items: [anItem()],
      },
    });
  });

  it('follows the last version in number', () => {
    expect(issue(list({ versions: [aVersion(), aVersion({ number: 4 })] }), frozen())).toMatchObject({
      version: { number: 5 },
    });
  });
});

describe('a draft is refused', () => {
  it('without an item', () => {
    expect(issue(list({ items: [] }))).toEqual({ kind: 'refused', why: 'noItems' });
  });

  it('while something stands against an item, or its prices are not made yet', () => {
    const two = list({ items: [item, { ...item, id: 'mugs' }] });
    for (const outcome of [
      { kind: 'falls', at: 12 },
      { kind: 'stopped' },
      { kind: 'asked' },
      { kind: 'gone' },
    ])
      expect(issue(two, frozen(), outcome), outcome.kind).toEqual({ kind: 'refused', why: 'itemsRefused' });
  });

  it('with tax inside some of its prices and not in others', () => {
    const two = list({ items: [item, { ...item, id: 'mugs' }] });
    expect(issue(two, frozen('added'), frozen('inside'))).toEqual({ kind: 'refused', why: 'mixedTax' });
  });
});
