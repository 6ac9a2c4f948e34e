import { describe, expect, it } from 'vitest';
import { offerLine, refusalWords } from '@/app/_words/priceLists/offerWords';
import { anItem } from '@/tests/lib/priceLists/aVersion';

const context = {
  locale: 'en-US',
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
  currency: 'USD',
} as const;

const frozen = (item = anItem()) => ({ kind: 'frozen', taxMode: 'added', borne: [], item }) as const;

describe('what a draft offers of an item', () => {
  it('is its dearest and its cheapest price, and what the worst of them leaves', () => {
    expect(offerLine(frozen(), context)).toBe(
      '20.00 USD down to 18.00 USD a piece; leaves 30.2 % where it leaves least.',
    );
  });

  it('is so much to start and so much a piece where it is sold by a tariff', () => {
    const item = anItem({ selling: 'setUpApart', setUp: { start: 13_181, each: 1270 } });
    expect(offerLine(frozen(item), context)).toMatch(/^131\.81 USD to start and 12\.70 USD a piece;/);
  });
});

describe('a least order', () => {
  it('that the smallest order bears already is said to be left off', () => {
    const words = offerLine({ ...frozen(), borne: ['minimumOrder'] }, context);
    expect(words).toContain('A least order is not listed: the smallest order pays as much already.');
    expect(offerLine(frozen(), context)).not.toContain('least order');
  });
});

describe('why an item cannot be issued', () => {
  const told = (offer: Parameters<typeof refusalWords>[0]) =>
    refusalWords(offer, 'Club shirt', context)?.sentence ?? null;

  it('is told with the name of the item', () => {
    expect(told({ kind: 'falls', at: 12 })).toBe('Club shirt: 12 pieces would cost less than 11.');
    expect(told({ kind: 'loses', from: 24, at: 47, margin: -0.02 })).toContain('under the full cost');
    expect(told({ kind: 'gone' })).toBe('The job of Club shirt is no longer here.');
    expect(told({ kind: 'stopped', why: null })).toBe('The job of Club shirt is stopped.');
    expect(told({ kind: 'noTaxMode' })).toContain('tax');
  });

  it('is nothing for one that can be, or that is still being priced', () => {
    expect(told(frozen())).toBeNull();
    expect(told({ kind: 'asked' })).toBeNull();
  });
});
