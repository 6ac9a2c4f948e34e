import { describe, expect, it } from 'vitest';
import { chargesOnPaper, moneyOf, sizesOnPaper, stepsOnPaper } from '@/app/_words/priceLists/paperWords';
import { anItem, aVersion } from '@/tests/lib/priceLists/aVersion';

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

describe('steps on the paper', () => {
  const least = { leastAt: 1, leastSize: 'M', leastMargin: 0.3 };

  it('join neighbours of one price', () => {
    const breaks = [
      { from: 1, to: 5, each: 1800, ...least },
      { from: 6, to: 11, each: 1300, ...least },
      { from: 12, to: 23, each: 1250, ...least },
      { from: 24, to: 47, each: 1250, ...least },
      { from: 48, to: null, each: 1250, ...least },
    ];
    expect(stepsOnPaper(breaks)).toEqual([
      { from: 1, to: 5, each: 1800 },
      { from: 6, to: 11, each: 1300 },
      { from: 12, to: null, each: 1250 },
    ]);
    expect(stepsOnPaper(breaks.slice(0, 4))).toContainEqual({ from: 12, to: 47, each: 1250 });
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
