import { describe, expect, it } from 'vitest';
import { formatterFor, type TextContext } from '@/app/_words/formatter';

const units = { length: 'in', distance: 'mi', temperature: 'F', pressure: 'psi', volume: 'mL' } as const;

describe('A rate in words', () => {
  it.each([
    ['USD', 4.6, 'money/piece', '4.60 USD a piece'],
    ['USD', 0.018, 'money/piece', '0.018 USD a piece'],
    ['JPY', 500, 'money/piece', '500 JPY a piece'],
    ['USD', 0.5, 'money', '0.50 USD'],
  ] as const)('in %s: %d %s is %s', (currency, value, unit, text) => {
    const context: TextContext = { locale: 'en', currency, units };
    expect(formatterFor(context).rate(value, unit)).toBe(text);
  });
});
