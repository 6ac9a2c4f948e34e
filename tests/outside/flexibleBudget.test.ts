import { describe, expect, it } from 'vitest';
import { gapsOf } from '@/lib/variances/gapsOf';
import type { RunActuals } from '@/lib/variances/runActuals';
import type { RunBudget } from '@/lib/variances/runBudget';

/*
 * Formulas: OpenStax, Principles of Accounting, Volume 2: Managerial Accounting, 8.2 and 8.3: price (rate) variance =
 * (standard − actual price) · actual quantity; quantity (efficiency) variance = (standard quantity for the actual output −
 * actual quantity) · standard price. Figures: none of the book's; all are worked by hand.
 */
const nothing = { quantity: 0, each: 0 };
const budget = (fields: Partial<RunBudget>): RunBudget => ({
  ...{ pieces: 0, blanks: nothing, sheets: nothing, ink: nothing, labour: nothing, elements: [] },
  ...{ overheadPerHour: 0, freight: 0, otherCost: 0, reprints: 0, fees: 0, revenue: 0 },
  ...fields,
});
const use = (quantity: number, each: number) => ({
  ...{ quantity, each, cost: quantity * each },
  ...{ quantityFrom: 'typed' as const, eachFrom: 'typed' as const },
});
const none = { amount: 0, from: 'typed' as const };
const actuals = (fields: Partial<RunActuals>): RunActuals => ({
  ...{ blanks: use(0, 0), sheets: use(0, 0), ink: use(0, 0), labour: use(0, 0), elements: [] },
  ...{ freight: none, otherCost: none, fees: none, reprints: none, revenue: none, otherCurrencies: [] },
  ...fields,
});
const amounts = (planned: RunBudget, came: RunActuals) =>
  new Map(gapsOf(planned, planned, came, 0).map(({ line, amount }) => [line, amount]));

describe('variances by the formulas of the textbook, with figures worked by hand', () => {
  it.each([
    // 3 at 8.00 for each of 5,000 pieces; 16,000 at 7.50 were used: 120,000 planned and 120,000 paid.
    { name: 'cheaper and more of it', sp: 8, sq: 3 * 5_000, ap: 7.5, aq: 16_000, price: 8_000, use: -8_000 },
    { name: 'dearer and less of it', sp: 2, sq: 1_000, ap: 2.25, aq: 900, price: -225, use: 200 },
    { name: 'as planned', sp: 4, sq: 50, ap: 4, aq: 50, price: 0, use: 0 },
  ])('material $name', ({ sp, sq, ap, aq, price, use: usage }) => {
    const found = amounts(budget({ blanks: { quantity: sq, each: sp } }), actuals({ blanks: use(aq, ap) }));
    expect(found.get('blanksPrice')).toBeCloseTo(price, 8);
    expect(found.get('blanksUsage')).toBeCloseTo(usage, 8);
    // Both come to what was planned for this output less what was paid.
    expect((found.get('blanksPrice') ?? 0) + (found.get('blanksUsage') ?? 0)).toBeCloseTo(
      sp * sq - ap * aq,
      8,
    );
  });

  it('labour takes what hours too many cost at the standard rate', () => {
    const found = amounts(
      budget({ labour: { quantity: 100, each: 20 }, overheadPerHour: 5 }),
      actuals({ labour: use(110, 20) }),
    );
    expect([found.get('labour'), found.get('overhead')]).toEqual([-200, -50]);
  });
});
