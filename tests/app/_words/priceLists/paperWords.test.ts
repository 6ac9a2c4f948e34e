import { describe, expect, it } from 'vitest';
import { chargesOnPaper, moneyOf, rowsOnPaper, sizesOnPaper } from '@/app/_words/priceLists/paperWords';
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

describe('rows on the paper', () => {
  const least = { leastAt: 1, leastSize: 'M', leastMargin: 0.3 };
  const breaks = [
    { from: 1, to: 5, each: 1800, ...least },
    { from: 6, to: 11, each: 1300, ...least },
    { from: 12, to: 23, each: 1250, ...least },
    { from: 24, to: 47, each: 1250, ...least },
    { from: 48, to: null, each: 1250, ...least },
  ];
  const told = (fields: Parameters<typeof anItem>[0]) =>
    rowsOnPaper(anItem(fields), dollars).map(({ pieces, pays }) => `${pieces}: ${pays}`);

  it('join neighbours of one price', () => {
    expect(told({ breaks })).toEqual(['1 to 5: 18.00', '6 to 11: 13.00', '12 and up: 12.50']);
  });

  it('say what small orders pay together, and no price a piece that nobody pays', () => {
    // 18.00 × 5 are 90.00, six at 13.00 are 78.00; 13.00 × 12 are 156.00, twelve at 12.50 are 150.00.
    expect(told({ breaks, selling: 'capped' })).toEqual([
      '1 to 4: 18.00 each',
      '5: 78.00 together',
      '6 to 11: 13.00 each',
      '12 and up: 12.50 each',
    ]);
  });

  it('stay as they were on lists that went out when a cap acted on each size', () => {
    expect(told({ breaks, selling: 'capped', capOn: 'size' })).toEqual(told({ breaks }));
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
