import { describe, expect, it } from 'vitest';
import { creditProblemWords } from '@/app/_words/orders/papers/creditProblemWords';
import { creditAnswer, invoiceAnswer, receiptAnswer } from '@/app/_words/orders/papers/followingWords';

const words = (minor: number) => `${(minor / 100).toFixed(2)} USD`;
const said = ({ strong, rest }: { readonly strong: string; readonly rest: string }) => `${strong}${rest}`;

describe('what a paper that follows comes to', () => {
  it('names what is left of the total, and what came beyond it as that', () => {
    expect(said(receiptAnswer(38_066, 38_065, words))).toBe('380.66 USD came, 380.65 USD left');
    expect(said(receiptAnswer(42_994, -4929, words))).toBe('429.94 USD came, 49.29 USD beyond the total');
    expect(said(invoiceAnswer({ total: 76_131, due: 38_065, isOfGoods: true }, words))).toBe(
      '761.31 USD, 380.65 USD still to pay',
    );
    expect(said(invoiceAnswer({ total: 76_131, due: -4929, isOfGoods: true }, words))).toBe(
      '761.31 USD, and 49.29 USD came beyond it',
    );
  });

  it('tells what can be given back of an invoice with its tax, as the invoice does', () => {
    // 749.00 × 1.07 is 801.43.
    const left = { subtotal: 74_900, tax: 5243, total: 80_143 };
    expect(said(creditAnswer({ left, mode: 'added', number: '26-001V' }, words))).toBe(
      '801.43 USD can be given back of invoice 26-001V: 749.00 USD and 52.43 USD of tax',
    );
    const inside = { subtotal: 80_143, tax: 5243, total: 80_143 };
    expect(said(creditAnswer({ left: inside, mode: 'inside', number: '26-001V' }, words))).toBe(
      '801.43 USD can be given back of invoice 26-001V',
    );
  });

  it('says of an amount over the invoice whether tax is on top of it', () => {
    const over = { kind: 'overInvoice', asked: 80_000, left: 74_900 } as const;
    expect(creditProblemWords(over, { currency: 'USD', locale: 'en-US', mode: 'added' })).toBe(
      '800.00 USD is more than the 749.00 USD without tax that is left of the invoice. Give back less.',
    );
    expect(creditProblemWords(over, { currency: 'USD', locale: 'en-US', mode: 'inside' })).toBe(
      '800.00 USD is more than the 749.00 USD that is left of the invoice. Give back less.',
    );
  });
});
