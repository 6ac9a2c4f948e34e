import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import { clubWith, mended, told, verdict } from '@/tests/fixtures/clubJob';

describe('QTY-01 compares the sizes with the order', () => {
  it.each([
    [37, 'pass'],
    [null, 'pass'],
    [36, 'stop'],
    [38, 'stop'],
  ])('37 pieces, ordered %s: %s', (orderedQuantity, expected) => {
    const input = clubWith({ 'job.lines.0.orderedQuantity': orderedQuantity });
    expect(verdict(input, 'QTY-01')).toBe(expected);
    if (expected === 'stop') {
      expect(told(input, 'QTY-01')[0]?.waivable).toBe(false);
      expect(verdict(mended(input, told(input, 'QTY-01')[0]), 'QTY-01')).toBe('pass');
    }
  });
});

describe('QTY-02 wants whole pieces, one or more, and questions thousands', () => {
  const of = (quantity: number) =>
    clubWith({
      'job.lines.0.quantities': [{ size: 'L', quantity }],
      'job.lines.0.orderedQuantity': null,
    });

  it.each([
    [0, 'stop none'],
    [0.5, 'stop fraction'],
    [1, 'pass'],
    [2.5, 'stop fraction'],
    [2000, 'pass'],
    [2001, 'caution many'],
  ])('%d: %s', (quantity, expected) => {
    expect(verdict(of(quantity), 'QTY-02')).toBe(expected);
  });

  it('stops a line without any size', () => {
    const input = clubWith({ 'job.lines.0.quantities': [], 'job.lines.0.orderedQuantity': null });
    expect(verdict(input, 'QTY-02')).toBe('stop none');
    expect(checkJob(input).checked).toBeNull();
  });
});

describe('QTY-04 stops sizes that cannot be made', () => {
  it('a size the blank does not come in', () => {
    const input = clubWith({ 'job.lines.0.quantities.0.size': 'XS' });
    expect(verdict(input, 'QTY-04')).toBe('stop noBlank');
  });

  it('a size without a price, with the typical one on its button', () => {
    const input = clubWith({ 'blank:white-shirt.sizes.5.price': null });
    expect(verdict(input, 'QTY-04')).toBe('stop noPrice');
    expect(told(input, 'QTY-04')[0]?.where).toMatchObject({ document: 'job', size: '3XL' });
    const after = mended(input, told(input, 'QTY-04')[0]);
    expect(verdict(after, 'QTY-04')).toBe('pass');
    expect(verdict(after, 'RATE-01')).toBe('pass');
  });

  it('a size that the blank names twice, and the button prices whichever has no price', () => {
    const twice = { 'blank:white-shirt.sizes.1.name': 'S' };
    for (const open of [[0], [1], [0, 1]]) {
      const unpriced = open.map((index) => [`blank:white-shirt.sizes.${index}.price`, null]);
      const input = clubWith({ ...twice, ...Object.fromEntries(unpriced) });
      expect(verdict(input, 'QTY-04')).toContain('noPrice');
      const [finding] = told(input, 'QTY-04').filter(({ variant }) => variant === 'noPrice');
      expect(verdict(mended(input, finding), 'QTY-04')).not.toContain('noPrice');
    }
  });

  it('a size that no print serves', () => {
    const input = clubWith({
      'job.lines.0.placements.0.prints.0.sizes': ['S', 'M', 'L', 'XL', '2XL'],
    });
    expect(told(input, 'QTY-04').map(({ where }) => where.size)).toEqual(['3XL']);
    expect(verdict(mended(input, told(input, 'QTY-04')[0]), 'QTY-04')).toBe('pass');
  });

  it('nothing of a size of which none is wanted', () => {
    const input = clubWith({
      'job.lines.0.quantities.5.quantity': 0,
      'job.lines.0.orderedQuantity': 36,
      'blank:white-shirt.sizes.5.price': null,
    });
    expect(verdict(input, 'QTY-04')).toBe('pass');
    expect(checkJob(input).checked).not.toBeNull();
  });
});

// 11 L shirts through presses that lose 3.5 % and 2 %, 1 % of blanks faulty: 11 ÷ 0.93624 = 11.75, so 12.
describe('QTY-08 counts what is left of the last pack', () => {
  const packs = (packSize: number | null, onHand: number | null = null) =>
    told(
      {
        ...clubWith({ 'blank:white-shirt.sizes.2.packSize': packSize }),
        onHand: onHand === null ? {} : { 'white-shirt': { L: onHand } },
      },
      'QTY-08',
    )[0]?.facts;

  it.each([
    [null, 0, undefined],
    [1, 0, undefined],
    [12, 0, undefined],
    [6, 0, undefined],
    [10, 0, { needed: 12, buy: 20, left: 8, worth: 8 * 4.6, counted: 0 }],
    // Nobody counted: bought whole, and told so. Below none takes nothing away either.
    [10, null, { needed: 12, buy: 20, left: 8, worth: 8 * 4.6, counted: null }],
    [10, -5, { needed: 12, buy: 20, left: 8, worth: 8 * 4.6, counted: -5 }],
    [5, 0, { needed: 12, buy: 15, left: 3 }],
    [10, 2, undefined],
    [10, 12, undefined],
    [10, 100, undefined],
  ])('packs of %s with %d on the shelf', (packSize, onHand, expected) => {
    if (expected === undefined) expect(packs(packSize, onHand)).toBeUndefined();
    else expect(packs(packSize, onHand)).toMatchObject(expected);
  });
});
