import { describe, expect, it } from 'vitest';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { plainQuote } from './plainQuote';
import { ready } from './quoteTools';

describe('what an order is asked for', () => {
  it('is less its discount before tax', () => {
    // 10 % of 711.50 is 71.15; 640.35 × 0.07 is 44.8245.
    const { body } = ready({ order: { discount: { kind: 'share', share: 0.1, why: 'club' } } });
    expect(body.discount).toEqual({ amount: 7115, why: 'club' });
    expect(body.sums).toEqual({ subtotal: 64_035, tax: 4482, total: 68_517 });
  });

  it('has charges and credits in lines of their own', () => {
    // 711.50 + 50.00 − 15.00.
    const charges = [
      { id: 'rush', kind: 'rush', what: 'Rush', amount: 50 },
      { id: 'sample', kind: 'own', what: 'Sample paid already', amount: -15 },
    ];
    const { body } = ready({ order: { charges } });
    expect(body.charges).toEqual([
      { what: 'Rush', amount: 5000 },
      { what: 'Sample paid already', amount: -1500 },
    ]);
    expect(body.sums.subtotal).toBe(74_650);
  });

  it('leaves its maker what charges and discounts come to, less fees', () => {
    // Ten blanks at 1.00, sold at 10.00 with 5.00 on top and a tenth off: 105.00 less 10.50 less 10.00.
    const { owner } = plainQuote({
      sizes: [{ quantity: 10, blank: 1 }],
      asked: 10,
      order: {
        charges: [{ id: 'rush', kind: 'rush', what: 'Rush', amount: 5 }],
        discount: { kind: 'share', share: 0.1, why: '' },
      },
    });
    expect(owner.profit).toBe(8450);
    expect(owner.margin).toBeCloseTo(84.5 / 94.5, 12);
  });

  it('takes the suggested price, with what it pays once, where none is asked', () => {
    // (30 + 6 n) ÷ 0.6 is 50 to start and 10 a piece.
    const input = { sizes: [{ quantity: 10, blank: 6 }], freight: 30, targetMargin: 0.4 };
    const { goods } = plainQuote(input);
    // Ten need 90 ÷ 0.6.
    expect(goods[0]?.sizes[0]).toMatchObject({ each: 1500, total: 15_000 });
    const apart = clubWith({ 'job.lines.0.askedPrice': null, 'job.lines.0.selling': 'setUpApart' });
    // 132.00 to start; 32 at 12.50, four at 15.00, one at 16.50.
    const { body } = ready({ input: apart });
    expect(body.goods[0]?.start).toBe(13_200);
    expect(body.sums.subtotal).toBe(60_850);
  });

  it('adds up over several jobs of one order', () => {
    const jobs = [
      { jobId: 'club-order', input: club() },
      { jobId: 'again', input: clubWith({ 'job.lines.0.askedPrice': 20 }) },
    ];
    const { body } = ready({ jobs, order: { jobIds: ['club-order', 'again'] } });
    // 711.50 and 37 more.
    expect(body.sums.subtotal).toBe(71_150 + 74_850);
    expect(body.goods.map(({ jobId }) => jobId)).toEqual(['club-order', 'again']);
    // Twice 411.79, rounded once.
    expect(body.owner.fullCost).toBeCloseTo(2 * 41_179, -1);
  });

  it('goes by the way of selling that the order names', () => {
    const { body } = ready({ order: { channelId: 'own-orders', depositShare: 0.25, validDays: 30 } });
    // A quarter of 761.31 is 190.3275.
    expect([body.deposit, body.balance]).toEqual([19_033, 57_098]);
    expect(body.validUntil).toBe('2026-12-25');
  });

  it('tells a customer the blank, its fibres and colour, and each print with its size', () => {
    const [goods] = ready().body.goods;
    expect(goods?.says).toMatch(/^White shirt, 100 % polyester, /i);
    expect(goods?.prints.map(({ name, position }) => [name, position])).toEqual([
      ['Back picture', 'back'],
      ['Chest badge', 'leftChest'],
    ]);
    expect(goods?.prints[0]?.widthMm).toBeCloseTo(203.2, 10);
  });
});
