import { describe, expect, it } from 'vitest';
import { clubWith, mended, told, verdict } from '@/tests/fixtures/clubJob';

describe('price breaks are asked about where they do not rise', () => {
  it.each([
    ['rising', [1, 6, 12], []],
    ['out of order', [1, 12, 6], ['outOfOrder']],
    ['doubled', [1, 6, 6], ['doubled']],
  ])('%s', (_, breaks, variants) => {
    const input = clubWith({ 'workshop.policy.breaks': breaks });
    const found = told(input, 'RATE-03');
    expect(found.map(({ variant }) => variant)).toEqual(variants);
    for (const finding of found) expect(verdict(mended(input, finding), 'RATE-03')).toBe('pass');
  });
});

describe('a price ending is asked about where no coin pays it', () => {
  it.each([
    ['USD', 0.01, []],
    ['USD', 0.005, ['ending']],
    ['JPY', 1, []],
    ['JPY', 0.5, ['ending']],
    ['KWD', 0.005, []],
  ])('%s on %d', (currency, priceStep, variants) => {
    const input = clubWith({ 'workshop.currency': currency, 'workshop.policy.priceStep': priceStep });
    const found = told(input, 'RATE-03').filter(({ variant }) => variant === 'ending');
    expect(found.map(({ variant }) => variant)).toEqual(variants);
    for (const finding of found) {
      expect(told(mended(input, finding), 'RATE-03').filter(({ variant }) => variant === 'ending')).toEqual(
        [],
      );
    }
  });
});

it('a step for up-charges is asked about like the ending of prices', () => {
  const input = clubWith({ 'workshop.policy.upChargeStep': 0.005 });
  const [finding] = told(input, 'RATE-03');
  expect(finding).toMatchObject({ variant: 'ending', where: { path: ['policy', 'upChargeStep'] } });
  expect(verdict(mended(input, finding), 'RATE-03')).toBe('pass');
});

describe('an own price of a break is asked about where no coin pays it', () => {
  it.each([
    ['USD', 12.5, 'pass'],
    ['USD', 12.505, 'caution ownFiner'],
    ['KWD', 12.505, 'pass'],
    ['JPY', 1250, 'pass'],
    ['JPY', 12.5, 'caution ownFiner'],
  ])('%s %d', (currency, each, expected) => {
    const input = clubWith({
      'workshop.currency': currency,
      'workshop.policy.priceStep': 1,
      'job.lines.0.ownPrices': [{ from: 12, each }],
    });
    const found = told(input, 'RATE-03').filter(({ variant }) => variant === 'ownFiner');
    expect(found.length === 0 ? 'pass' : `${found[0]?.severity} ${found[0]?.variant}`).toBe(expected);
    for (const finding of found)
      expect(told(mended(input, finding), 'RATE-03').filter(({ variant }) => variant === 'ownFiner')).toEqual(
        [],
      );
  });
});

describe('a machine may fetch what it cost, and no more', () => {
  const resale = (value: number) =>
    clubWith({
      'workshop.presses.0.resale': { value, unit: 'money', date: '2026-11-25', origin: 'yours' },
    });

  it.each([
    [480, 0],
    [480.01, 1],
  ])('resale %d of 480', (value, count) => {
    expect(told(resale(value), 'RATE-03').filter(({ variant }) => variant === 'resale')).toHaveLength(count);
  });

  it.each([
    ['presses', 480, 60],
    ['presses', 25, 25],
    ['printers', 0, 0],
  ])('of %s that cost %d the typical resale is %d', (machines, price, typical) => {
    const input = clubWith({
      [`workshop.${machines}.0.price`]: { value: price, unit: 'money', date: '2026-11-25', origin: 'yours' },
      [`workshop.${machines}.0.resale`]: null,
    });
    const missing = told(input, 'RATE-01').filter(({ where }) => where.path.at(-1) === 'resale');
    expect(missing.map(({ facts }) => facts.typical)).toEqual([typical]);
    for (const finding of missing) {
      const left = told(mended(input, finding), 'RATE-03').filter(
        ({ where }) => where.path.at(-1) === 'resale',
      );
      expect(left).toEqual([]);
    }
  });
});

describe('an up-charge may lower a price, but not to nothing', () => {
  it.each([
    [-18.99, 'pass'],
    [-19, 'stop nothing'],
    [-20, 'stop nothing'],
  ])('%d on 19', (amount, expected) => {
    const input = clubWith({ 'job.lines.0.upCharges': [{ size: 'M', amount }] });
    expect(verdict(input, 'RATE-08')).toBe(expected);
  });
});
