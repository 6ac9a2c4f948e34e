import { describe, expect, it } from 'vitest';
import { documentTax } from '@/lib/price/tax/documentTax';
import { taxAdded, taxInside } from '@/lib/price/tax/taxOf';
import type { MinorUnits } from '@/shared/money';
import { toMinor } from '@/shared/money';
import { roundCash } from '@/shared/roundCash';
import { cashStep } from '@/shared/tables/cashRounding';

const usd = (amount: number): MinorUnits => toMinor(amount, 'USD');
const lines = (amounts: readonly number[], tax = 0.07) =>
  amounts.map((amount) => ({ amount: usd(amount), tax }));

describe('documentTax', () => {
  it('rounds the club order once for the document: 711.50 is 761.31 with tax', () => {
    const answer = documentTax(lines([711.5]), { currency: 'USD', mode: 'added', rounding: 'document' });
    expect(answer.total).toEqual({ without: 71_150, tax: 4981, with: 76_131 });
  });

  it('rounds on each line, or once and hands the parts out by largest remainder', () => {
    // 7 % of 0.07 is 0.0049 on each of three lines: nothing line by line, one cent and a half together.
    const three = lines([0.07, 0.07, 0.08]);
    const byLine = documentTax(three, { currency: 'USD', mode: 'added', rounding: 'line' });
    expect(byLine.lines.map(({ tax }) => tax)).toEqual([0, 0, 1]);
    const byDocument = documentTax(three, { currency: 'USD', mode: 'added', rounding: 'document' });
    expect(byDocument.total.tax).toBe(2);
    expect(byDocument.lines.map(({ tax }) => tax)).toEqual([1, 0, 1]);
  });

  it('keeps the shares of tax apart', () => {
    const mixed = [...lines([10], 0.2), ...lines([10], 0.05)];
    const answer = documentTax(mixed, { currency: 'USD', mode: 'inside', rounding: 'document' });
    expect(answer.lines.map(({ tax }) => tax)).toEqual([167, 48]);
    expect(answer.total.with).toBe(2000);
  });

  it('takes the tax of money that is given back off', () => {
    const answer = documentTax(lines([20, -20]), { currency: 'USD', mode: 'added', rounding: 'document' });
    expect(answer.lines.map(({ tax }) => tax)).toEqual([140, -140]);
    expect(answer.total).toEqual({ without: 0, tax: 0, with: 0 });
  });

  it('has nothing to tax on an empty document', () => {
    const answer = documentTax([], { currency: 'USD', mode: 'added', rounding: 'document' });
    expect(answer).toEqual({ lines: [], total: { without: 0, tax: 0, with: 0 } });
  });

  it('rounds in whole yen and in thousandths of a dinar', () => {
    expect(taxAdded(toMinor(105, 'JPY'), 0.1).tax).toBe(11);
    expect(taxAdded(toMinor(1.005, 'KWD'), 0.05).tax).toBe(50);
  });
});

describe('tax inside and added', () => {
  it('agree on half cents, whichever way they come', () => {
    expect(taxAdded(usd(711.5), 0.07).tax).toBe(4981);
    expect(taxInside(usd(761.31), 0.07)).toEqual({ without: 71_150, tax: 4981, with: 76_131 });
  });
});

describe('roundCash', () => {
  // The step in the currency, and totals about its halves.
  it.each([
    ['CAD', 4.92, 4.9],
    ['CAD', 4.93, 4.95],
    ['CAD', 5.98, 6],
    ['CAD', 5.97, 5.95],
    ['CHF', 1.02, 1],
    ['CHF', 1.03, 1.05],
    ['DKK', 12.24, 12],
    ['DKK', 12.25, 12.5],
    ['HUF', 1012, 1010],
    ['HUF', 1013, 1015],
    ['SEK', 223.49, 223],
    ['SEK', 223.5, 224],
    ['NOK', 65.4, 65],
    ['AUD', 20.42, 20.4],
    ['AUD', 20.43, 20.45],
    // Five cents go down there, six up.
    ['NZD', 3.85, 3.8],
    ['NZD', 3.86, 3.9],
    ['USD', 4.92, 4.92],
    ['JPY', 105, 105],
    ['KWD', 1.234, 1.234],
  ])('takes %s %f as %f', (currency, total, cash) => {
    expect(roundCash(toMinor(total, currency), currency)).toBe(toMinor(cash, currency));
  });

  it('rounds money given back as much as money taken', () => {
    expect(roundCash(toMinor(-4.93, 'CAD'), 'CAD')).toBe(-495);
  });

  it('knows no step for a code that is none', () => {
    expect(cashStep('XXX')).toBeNull();
    expect(() => roundCash(100 as MinorUnits, 'XXX')).toThrow('ISO 4217');
  });
});
