import { describe, expect, it } from 'vitest';
import { chargesOnPaper, moneyOf, sizesOnPaper } from '@/app/_lists/paperWords';
import { anItem, aVersion } from '@/tests/lib/price/listDocument/aVersion';

const dollars = moneyOf('USD', 'en-US');

describe('sizes on the paper', () => {
  it('stand together where they add the same, and tell what they add', () => {
    expect(sizesOnPaper(anItem(), dollars)).toBe('S to L; 2XL + 1.50');
  });

  it('take the marks of the locale and the digits of the currency', () => {
    expect(sizesOnPaper(anItem(), moneyOf('EUR', 'de-DE'))).toBe('S to L; 2XL + 1,50');
    expect(sizesOnPaper(anItem(), moneyOf('JPY', 'ja-JP'))).toBe('S to L; 2XL + 150');
    expect(sizesOnPaper(anItem(), moneyOf('KWD', 'en-US'))).toBe('S to L; 2XL + 0.150');
  });

  it('are named by themselves where there is one or two', () => {
    const sizes = (...names: string[]) => anItem({ sizes: names.map((size) => ({ size, upCharge: 0 })) });
    expect(sizesOnPaper(sizes('11 oz'), dollars)).toBe('11 oz');
    expect(sizesOnPaper(sizes('S', 'M'), dollars)).toBe('S and M');
  });
});

describe('charges on the paper', () => {
  const other = anItem({ id: 'mugs', name: 'Mug', charges: [{ kind: 'name', name: '', amount: 300 }] });

  it('stand once where all items have the same', () => {
    const version = aVersion({ items: [anItem(), anItem({ id: 'again', name: 'Second shirt' })] });
    expect(chargesOnPaper(version).map(({ label, amount }) => [label, amount])).toEqual([
      ['Least order', 10_100],
      ['A name, each', 250],
    ]);
  });

  it('say of which item they are where amounts differ', () => {
    const version = aVersion({ items: [anItem(), other] });
    expect(chargesOnPaper(version).map(({ label, amount }) => [label, amount])).toEqual([
      ['Least order', 10_100],
      ['A name, each (Club shirt)', 250],
      ['A name, each (Mug)', 300],
    ]);
  });
});
