import { expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { stockWords } from '@/app/_words/supply/buyingWords';
import type { BuyingRow } from '@/lib/buying/buyingPlan';
import { club } from '@/tests/fixtures/clubJob';

const words = (stock: BuyingRow['stock']) => stockWords({ stock }, formatterFor(club().workshop));

it('asks to count what more was taken of than lay there', () => {
  expect(words({ kind: 'counted', onHand: -16, reserved: 0, free: 0 })).toBe('16 fewer than none (count it)');
  expect(words({ kind: 'counted', onHand: 10, reserved: 8, free: 2 })).toBe('10, 8 reserved, 2 free');
});
