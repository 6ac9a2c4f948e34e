import { describe, expect, it } from 'vitest';
import { quoteBody } from '@/lib/quotes/quoteBody';
import { stillHolds } from '@/lib/quotes/stillHolds';
import { addDays } from '@/shared/days';
import { clubWith, TODAY } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';
import { asking, clubCustomer, ready } from './quoteTools';

type Asked = NonNullable<Parameters<typeof asking>[0]>;

const quoted = (asked: Asked = {}) => quoteBody(ready(asked), { count: 1, letter: 'A' }, ({ id }) => id);
const quote = quoted();
const standing = (today: Asked, of = quote) => stillHolds(of, asking(today), grid);
const blanksAt = (value: number) =>
  clubWith(
    Object.fromEntries([0, 1, 2, 3].map((size) => [`blank:white-shirt.sizes.${size}.price.value`, value])),
  );

describe('a quote that went out', () => {
  it('holds on the day it was made, with nothing moved', () => {
    const now = standing({});
    expect(now).toMatchObject({ kind: 'compared', holds: true, isExpired: false, moved: [] });
    expect(now).toMatchObject({ quoted: quote.sums, now: quote.sums });
    if (now.kind === 'compared') expect(now.marginNow).toBeCloseTo(quote.owner.margin, 12);
  });

  it('tells which rates moved, and holds while it leaves what it was made for', () => {
    // 32 shirts a dollar dearer leave some 254 of 711.50, above the 30 % it was made for.
    const now = standing({ input: blanksAt(5.6) });
    expect(now).toMatchObject({ kind: 'compared', holds: true });
    if (now.kind === 'compared') {
      expect(now.moved).toHaveLength(4);
      expect(now.marginNow).toBeLessThan(now.marginThen);
    }
  });

  it('holds no longer where it leaves less than that', () => {
    expect(standing({ input: blanksAt(9) })).toMatchObject({ kind: 'compared', holds: false });
  });

  it('shows a loss instead of stopping at it', () => {
    const now = standing({ input: blanksAt(30) });
    expect(now).toMatchObject({ kind: 'compared', holds: false });
    if (now.kind === 'compared') expect(now.profitNow).toBeLessThan(0);
  });

  it('tells what the order comes to now at a price that was changed since', () => {
    // 37 × 20.00 + 4 × 1.50 + 2.50 are 748.50.
    const now = standing({ input: clubWith({ 'job.lines.0.askedPrice': 20 }) });
    expect(now).toMatchObject({ kind: 'compared', holds: true, now: { subtotal: 74_850 } });
  });

  it('is expired the day after it ends', () => {
    const later = (days: number) => standing({ day: addDays(TODAY, days), input: clubWith({}) });
    expect([later(14), later(15)]).toMatchObject([{ isExpired: false }, { isExpired: true }]);
  });

  it('of other quantities than the order has now is not compared', () => {
    const input = clubWith({ 'job.lines.0.quantities.0.quantity': 5 });
    expect(standing({ input })).toEqual({ kind: 'otherGoods' });
  });

  it('in prices that stand otherwise to tax now is not compared', () => {
    const input = clubWith({ 'workshop.channels.0.taxMode': 'none' });
    expect(standing({ input })).toEqual({ kind: 'otherTerms' });
  });

  it('holds with charges, a discount and no tax as well', () => {
    const asked = {
      customer: clubCustomer({ exemption: { number: 'RS-1', validUntil: null, proof: null } }),
      order: {
        exempt: true,
        discount: { kind: 'share', share: 0.05, why: '' },
        charges: [{ id: 'a', kind: 'own', what: 'Folding', amount: 9 }],
      },
    };
    const now = standing(asked, quoted(asked));
    expect(now).toMatchObject({ kind: 'compared', holds: true });
    if (now.kind === 'compared') expect(now.marginNow).toBeCloseTo(now.marginThen, 12);
  });

  it('is told why where the order could not be quoted today', () => {
    expect(standing({ customer: null })).toMatchObject({
      kind: 'refused',
      obstacles: [{ kind: 'noCustomer' }],
    });
  });
});
