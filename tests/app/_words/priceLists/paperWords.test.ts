import { describe, expect, it } from 'vitest';
import { chargesOnPaper, moneyOf, pricesOnPaper, sizesOnPaper } from '@/app/_words/priceLists/paperWords';
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

describe('prices on the paper', () => {
  const least = { leastAt: 1, leastSize: 'M', leastMargin: 0.3 };
  const breaks = [
    { from: 1, to: 5, each: 1800, ...least },
    { from: 6, to: 11, each: 1300, ...least },
    { from: 12, to: 23, each: 1250, ...least },
    { from: 24, to: 47, each: 1250, ...least },
    { from: 48, to: null, each: 1250, ...least },
  ];
  const told = (fields: Parameters<typeof anItem>[0]) =>
    pricesOnPaper(anItem(fields), dollars).map(({ of, pays, how, atMost }) =>
      [`${of}: ${pays}`, how, atMost === null ? null : `at most ${atMost}`].filter(Boolean).join(' '),
    );

  it('join neighbours of one price', () => {
    expect(told({ breaks })).toEqual(['1 to 5: 18.00', '6 to 11: 13.00', '12 and up: 12.50']);
  });

  it('say what small orders pay together, and no price a piece that nobody pays', () => {
    // 18.00 × 5 are 90.00, six at 13.00 are 78.00; 13.00 × 12 are 156.00, twelve at 12.50 are 150.00.
    // Twelve pieces pay less than eleven at 13.00 (143.00) only from 150.00 on: nothing is held there.
    expect(told({ breaks, selling: 'capped' })).toEqual([
      'from 1: 18.00 each at most 78.00',
      'from 6: 13.00 each',
      'from 12: 12.50 each',
    ]);
  });

  it('begin with sums where one piece alone costs more than several at the next break', () => {
    // Two and three pieces at 144.50 would pay more than four at 45.50, which are 182.00.
    const capped = [
      { from: 1, to: 3, each: 14_450, ...least },
      { from: 4, to: null, each: 4550, ...least },
    ];
    expect(told({ breaks: capped, selling: 'capped' })).toEqual([
      '1: 144.50',
      '2 to 3: 182.00 together',
      'from 4: 45.50 each',
    ]);
  });

  it('are one a size, charge and all, where every piece has one price', () => {
    const one = [{ from: 1, to: null, each: 1250, ...least }];
    expect(told({ breaks: one, selling: 'onePrice' })).toEqual(['S to L: 12.50', '2XL: 14.00']);
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
