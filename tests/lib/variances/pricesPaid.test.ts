import { describe, expect, it } from 'vitest';
import { paidForRun } from '@/lib/variances/pricesPaid';
import type { RunStep } from '@/shared/schemas/making/runEvents';
import { goodsInSchema } from '@/shared/schemas/making/supplyEvents';
import { noteOf } from '@/tests/fixtures/clubStandard';

const delivery = (day: string, amountMinor: number, currency = 'USD') =>
  goodsInSchema.parse({
    ...{ day, currency, supplierId: null },
    rows: [
      {
        item: { kind: 'blank', blankId: 'shirt', size: 'M' },
        ...{ ordered: null, counted: 10, faulty: 0, amountMinor },
      },
    ],
  });
const closed = (day: string) => {
  const step: RunStep = { runId: 'run', standardId: null, day, step: { what: 'closed', note: '' } };
  return { isClosed: true, steps: [noteOf('runStep', step)] };
};
const price = (...asked: Parameters<typeof paidForRun>) => paidForRun(...asked).blank('shirt', 'M');

describe('what was paid for a run', () => {
  const deliveries = [
    delivery('2026-12-01', 4_950),
    delivery('2027-01-20', 6_000),
    delivery('2026-11-01', 4_600),
  ];

  it('is the price of the newest delivery while it is open', () => {
    expect(price(deliveries, 'USD', { isClosed: false, steps: [] })).toBe(6);
  });

  it('stays as it was when the run was closed, whatever is bought later', () => {
    expect(price(deliveries, 'USD', closed('2026-12-12'))).toBe(4.95);
    // What came on the day itself may be in its pieces.
    expect(price(deliveries, 'USD', closed('2026-12-01'))).toBe(4.95);
    expect(price(deliveries, 'USD', closed('2026-10-01'))).toBe(null);
  });

  it('is told by all lots of a delivery together, and by none that came for nothing', () => {
    const row = { item: { kind: 'blank', blankId: 'shirt', size: 'M' }, ordered: null, faulty: 0 };
    const lots = goodsInSchema.parse({
      ...{ day: '2026-12-01', currency: 'USD', supplierId: null },
      rows: [
        { ...row, counted: 30, lot: 'A', amountMinor: 14_850 },
        { ...row, counted: 11, lot: 'B', amountMinor: 5_720 },
        // Sent for the faulty ones of another delivery.
        { ...row, counted: 4, lot: 'B', amountMinor: 0 },
      ],
    });
    // 30 at 4.95 and 11 at 5.20: 205.70 for 41.
    expect(price([lots], 'USD', closed('2026-12-12'))).toBeCloseTo(205.7 / 41, 10);
    // Three that replaced faulty ones later change no price.
    const free = goodsInSchema.parse({
      ...{ day: '2026-12-10', currency: 'USD', supplierId: null },
      rows: [{ ...row, counted: 3, amountMinor: 0 }],
    });
    expect(price([delivery('2026-12-01', 4_950), free], 'USD', closed('2026-12-12'))).toBe(4.95);
  });

  it('is told by no delivery that was paid in another currency', () => {
    expect(price(deliveries, 'EUR', closed('2026-12-12'))).toBe(null);
  });
});
