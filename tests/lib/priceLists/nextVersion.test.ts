import { describe, expect, it } from 'vitest';
import { nextVersion } from '@/lib/priceLists/nextVersion';
import type { PriceList, PriceListItem } from '@/shared/schemas/priceList';
import { anItem } from './aVersion';

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
  ...fields,
});

const frozen = (taxMode: 'added' | 'inside' = 'added') => ({ kind: 'frozen', taxMode, item: anItem() });
const issue = (of: PriceList, ...outcomes: readonly { readonly kind: string }[]) =>
  nextVersion(of, outcomes, 'USD', '2026-11-25');

describe('a draft that is issued', () => {
  it('keeps its words, prices, day and validity under the number it is given', () => {
    // Five days of November, all of December and January, and 23 of February.
    const next = issue(list(), frozen());
    if (next.kind === 'refused') throw new Error(JSON.stringify(next.obstacles));
    expect(next.version({ count: 1, letter: 'K' })).toEqual({
      number: { count: 1, letter: 'K' },
      issuedOn: '2026-11-25',
      validUntil: '2027-02-23',
      currency: 'USD',
      taxMode: 'added',
      title: 'Shirts for clubs',
      from: 'Alex Placeholder',
      notes: 'White shirts',
      leadTime: 'Two weeks',
      items: [anItem()],
    });
  });
});

describe('a draft is refused', () => {
  const two = list({ items: [item, { ...item, id: 'mugs' }] });

  it('without an item', () => {
    expect(issue(list({ items: [] }))).toEqual({ kind: 'refused', obstacles: [{ kind: 'noItems' }] });
  });

  it.each(['falls', 'stopped', 'gone'])('while an item %s, which is named', (kind) => {
    expect(issue(two, frozen(), { kind })).toEqual({
      kind: 'refused',
      obstacles: [{ kind: 'item', itemId: 'mugs' }],
    });
  });

  it('while prices are being made, with nothing to mend', () => {
    expect(issue(two, frozen(), { kind: 'asked' })).toEqual({ kind: 'refused', obstacles: [] });
  });

  it('with tax inside some of its prices and not in others', () => {
    expect(issue(two, frozen('added'), frozen('inside'))).toEqual({
      kind: 'refused',
      obstacles: [
        {
          kind: 'mixedTax',
          items: [
            { itemId: 'shirts', taxMode: 'added' },
            { itemId: 'mugs', taxMode: 'inside' },
          ],
        },
      ],
    });
  });

  it('with all that stands in its way at once', () => {
    const four = list({ items: ['a', 'b', 'c', 'd'].map((id) => ({ ...item, id })) });
    const issued = issue(four, { kind: 'stopped' }, frozen('added'), frozen('inside'), { kind: 'falls' });
    expect(issued.kind === 'refused' && issued.obstacles.map(({ kind }) => kind)).toEqual([
      'item',
      'item',
      'mixedTax',
    ]);
  });
});
