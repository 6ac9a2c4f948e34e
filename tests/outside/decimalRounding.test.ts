import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { type RoundingMode, roundDecimal } from '@/shared/decimal';
import { inPlace } from './inPlace';

/*
 * M. F. Cowlishaw, General Decimal Arithmetic testcases (IBM): rounding.decTest 2.59 and quantize.decTest 2.56.
 * The product has five of the seven modes; half-down and half-even round no money here.
 */
const ours: Readonly<Record<string, RoundingMode>> = {
  half_up: 'halfUp',
  up: 'up',
  down: 'down',
  floor: 'floor',
  ceiling: 'ceiling',
};

describe('rounds to whole numbers', () => {
  it.each([
    // value, half up, up, down, floor, ceiling
    [12_345.5, 12_346, 12_346, 12_345, 12_345, 12_346],
    [12_346.5, 12_347, 12_347, 12_346, 12_346, 12_347],
    [12_345.49999, 12_345, 12_346, 12_345, 12_345, 12_346],
    [12_345, 12_345, 12_345, 12_345, 12_345, 12_345],
    [-12_345.5, -12_346, -12_346, -12_345, -12_346, -12_345],
    [-12_345.1, -12_345, -12_346, -12_345, -12_346, -12_345],
    [-0.5, -1, -1, 0, -1, 0],
  ])('%d: half up %d, up %d, down %d, floor %d, ceiling %d', (value, ...wanted) => {
    const modes: readonly RoundingMode[] = ['halfUp', 'up', 'down', 'floor', 'ceiling'];
    expect(modes.map((mode) => roundDecimal(value, 0, mode))).toEqual(wanted);
  });
});

describe('rounds half up to a place', () => {
  it.each([
    [1.2345, 2, 1.23],
    [1.2355, 2, 1.24],
    [1.05, 1, 1.1],
    [352_364.506, 2, 352_364.51],
    [2.17, 1, 2.2],
    [-0.078, 2, -0.08],
  ])('%d to %d places is %d', (value, places, wanted) => {
    expect(roundDecimal(value, places, 'halfUp')).toBe(wanted);
  });
});

const vectors = inPlace('rounding-vectors.json', (content) =>
  z
    .object({
      roundToInteger: z.array(z.tuple([z.string(), z.string(), z.string()])),
      quantizeHalfUp: z.array(z.tuple([z.string(), z.string(), z.string()])),
    })
    .parse(content),
);

describe.skipIf(!vectors.there)(`the published cases (${vectors.says})`, () => {
  const { roundToInteger, quantizeHalfUp } = vectors.there
    ? vectors.data
    : { roundToInteger: [], quantizeHalfUp: [] };
  const known = roundToInteger.filter(([mode]) => mode in ours);

  it('there are 65 in the five modes and 18 of quantizing', () => {
    expect([known.length, quantizeHalfUp.length]).toEqual([65, 18]);
  });

  it.each(known)('%s of %s is %s', (mode, value, wanted) => {
    expect(roundDecimal(Number(value), 0, ours[mode] ?? 'halfUp')).toBe(Number(wanted));
  });

  it.each(quantizeHalfUp)('%s on %s is %s', (value, quantum, wanted) => {
    const places = Math.round(-Math.log10(Number(quantum)));
    // A minus before nothing is kept by the standard and never by the product.
    expect(roundDecimal(Number(value), places, 'halfUp')).toBe(Number(wanted) || 0);
  });
});
