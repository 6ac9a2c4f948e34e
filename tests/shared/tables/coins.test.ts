import { describe, expect, test } from 'vitest';
import { cashStep } from '@/shared/tables/cashRounding';
import { cashCurrencies, cashOf } from '@/shared/tables/coins';
import { currencyDigits } from '@/shared/tables/currencies';

const noCash = { notes: [], coins: [], commonNote: 0, priceStep: 0 };

describe.each(cashCurrencies)('notes and coins of %s', (code) => {
  const { notes, coins, commonNote, priceStep } = cashOf(code) ?? noCash;
  const all = [...notes, ...coins];

  test('stand from the largest to the smallest, each once', () => {
    expect(all).toEqual([...new Set(all)].sort((one, other) => other - one));
    expect(coins.length).toBeGreaterThan(0);
  });

  test('end with the smallest amount that cash is paid in', () => {
    expect(currencyDigits(code)).not.toBeNull();
    expect(all.at(-1)).toBe(cashStep(code));
  });

  test('have the note that customers pay with among them', () => {
    expect(notes).toContain(commonNote);
  });

  test('can pay a price on the usual step without smaller coins than there are', () => {
    expect(all.some((value) => priceStep % value === 0 && priceStep >= value)).toBe(true);
    expect(priceStep).toBeLessThan(commonNote);
  });
});

test('a currency whose coins are not known has none, which is not an empty tin', () => {
  expect(cashOf('XOF')).toBeNull();
  expect(cashOf('toString')).toBeNull();
});
