import { describe, expect, test } from 'vitest';
import { cashStep } from '@/shared/tables/cashRounding';
import { cashCurrencies, cashOf } from '@/shared/tables/coins';
import { currencyDigits } from '@/shared/tables/currencies';

describe.each(cashCurrencies)('notes and coins of %s', (code) => {
  const { notes, coins, commonNote } = cashOf(code) ?? { notes: [], coins: [], commonNote: 0 };
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
});

test('a currency whose coins are not known has none, which is not an empty tin', () => {
  expect(cashOf('XOF')).toBeNull();
  expect(cashOf('toString')).toBeNull();
});
