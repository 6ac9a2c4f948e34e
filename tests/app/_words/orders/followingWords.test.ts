import { describe, expect, it } from 'vitest';
import { invoiceAnswer, receiptAnswer } from '@/app/_words/orders/followingWords';

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
});
