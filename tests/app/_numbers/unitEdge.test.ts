import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unitEdge } from '@/app/_numbers/unitEdge';
import { cases } from '@/tests/tools/cases';

const inches = {
  currency: 'USD',
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
} as const;
const metric = {
  currency: 'EUR',
  units: { length: 'mm', temperature: 'C', pressure: 'bar', volume: 'mL', distance: 'km' },
} as const;

describe('unitEdge', () => {
  it.each(['length', 'distance', 'temperature', 'share'] as const)(
    'shows every %s of up to four decimals exactly as it was typed',
    (kind) => {
      fc.assert(
        fc.property(
          fc.integer({ min: 0, max: 99_999_999 }),
          fc.constantFrom(inches, metric),
          (count, measures) => {
            const typed = Number(`${count}e-4`);
            const { kept, shown } = unitEdge(kind, measures);
            expect(shown(kept(typed))).toBe(typed);
          },
        ),
        cases(100),
      );
    },
  );

  it('keeps lengths in mm, distances in km, temperatures in °C and shares of 1', () => {
    expect(unitEdge('length', inches).kept(8.5)).toBeCloseTo(215.9, 10);
    expect(unitEdge('distance', inches).kept(10)).toBeCloseTo(16.09344, 10);
    expect(unitEdge('temperature', inches).kept(392)).toBeCloseTo(200, 10);
    expect(unitEdge('share', inches).kept(7)).toBe(0.07);
    expect(unitEdge('length', metric).kept(210)).toBe(210);
  });
});
