import { describe, expect, it } from 'vitest';
import { quoteBody } from '@/lib/quotes/quoteBody';
import { quoteSchema } from '@/shared/schemas/orderPapers';
import { clubWith } from '@/tests/fixtures/clubJob';
import { clubAlternatives, ready } from './quoteTools';

/* The worked custom order: 32 shirts at 19.00, four 2XL at 20.50, one 3XL at 21.50, tax of 7 % on top. */
describe('the quote of the worked order', () => {
  const draft = ready({ order: { alternatives: clubAlternatives } });
  const { body } = draft;

  it('has each size at the asked price with its up-charge', () => {
    expect(body.goods[0]?.sizes).toEqual([
      { size: 'S', quantity: 4, each: 1900, total: 7600 },
      { size: 'M', quantity: 9, each: 1900, total: 17_100 },
      { size: 'L', quantity: 11, each: 1900, total: 20_900 },
      { size: 'XL', quantity: 8, each: 1900, total: 15_200 },
      { size: '2XL', quantity: 4, each: 2050, total: 8200 },
      { size: '3XL', quantity: 1, each: 2150, total: 2150 },
    ]);
  });

  it('comes to 711.50, with tax to 761.31, of which half is the deposit', () => {
    // 711.50 × 1.07 = 761.305; half of 761.31 is 380.655.
    expect(body.sums).toEqual({ subtotal: 71_150, tax: 4981, total: 76_131 });
    expect([body.deposit, body.balance]).toEqual([38_066, 38_065]);
  });

  it('comes to the same with tax on each line', () => {
    // 5.32 + 11.97 + 14.63 + 10.64 + 5.74 + 1.505 = 49.805, each rounded: 5.32, 11.97, 14.63, 10.64, 5.74, 1.51.
    const byLine = ready({ input: clubWith({ 'workshop.policy.taxRounding': 'line' }) });
    expect(byLine.body.sums).toEqual({ subtotal: 71_150, tax: 4981, total: 76_131 });
  });

  it('offers three more in L for 37.50', () => {
    const [forty] = body.alternatives;
    expect(forty).toMatchObject({ label: '40 × Club shirt', says: '3 more in L, 12.50 each' });
    // 711.50 + 3 × 12.50; 749.00 × 1.07 = 801.43.
    expect(forty?.sums).toEqual({ subtotal: 74_900, tax: 5243, total: 80_143 });
    expect(forty?.sizes.find(({ size }) => size === 'L')?.quantity).toBe(14);
    expect(forty?.deposit).toBe(40_072);
  });

  it('offers the back alone for less, and never for nothing', () => {
    const backOnly = body.alternatives[1];
    expect(backOnly?.label).toBe('Without Chest badge');
    expect(backOnly?.priced.lines[0]?.without).toEqual(['badge']);
    expect(backOnly?.sums.total).toBeLessThan(76_131);
  });

  it('keeps for its maker what it leaves', () => {
    const { owner } = body;
    expect(owner.fullCost).toBe(41_179);
    expect(owner.floor).toBe(24_339);
    expect(owner.profit).toBe(28_837);
    expect(owner.margin).toBeCloseTo(0.405, 3);
    expect(owner.payPerHour).toBe(5626);
    expect(owner.rates.length).toBeGreaterThan(20);
  });

  it('holds for 14 days, with two rounds of changes', () => {
    expect([body.issuedOn, body.validUntil]).toEqual(['2026-11-25', '2026-12-09']);
    expect(body.revisionsIncluded).toBe(2);
  });

  it('names seller and customer as they stand', () => {
    expect(body.seller.name).toBe('Exampleton Prints');
    expect(body.customer).toMatchObject({ name: 'Exampleton Ramblers Club', person: 'Alex Placeholder' });
    expect([body.language, body.page, body.length]).toEqual(['en', 'letter', 'in']);
  });

  it('tells each print at the size it comes out, and nothing of the blank twice', () => {
    // The back of 1,500 × 1,800 pixels lies inside its place of 8 × 10 in: 8 × 9.6 in are 203.2 × 243.84 mm.
    expect(body.goods[0]?.prints.map(({ widthMm, heightMm }) => [widthMm, heightMm])).toEqual([
      [expect.closeTo(203.2, 6), expect.closeTo(243.84, 6)],
      [expect.closeTo(88.9, 6), expect.closeTo(88.9, 6)],
    ]);
    expect(body.goods[0]?.says).toBe('White shirt, 100 % polyester, White');
  });

  it('is what its schema reads once it has a number', () => {
    const quote = quoteBody(draft, { count: 1, letter: 'A' }, ({ id }) => id);
    expect(quoteSchema.parse(quote)).toEqual(quote);
    expect(quote.owner.risks).toEqual(['ART-14', 'REC-12']);
  });
});
