import { describe, expect, it } from 'vitest';
import { sheetSizes } from '@/shared/tables/sheetSizes';

const all = Object.entries(sheetSizes);

/* ISO 216:2007, trimmed sizes of the A series in mm. */
describe('the A series', () => {
  it.each([
    ['a2', 420, 594],
    ['a3', 297, 420],
    ['a4', 210, 297],
    ['a5', 148, 210],
  ] as const)('%s is %d × %d mm', (name, width, height) => {
    expect([sheetSizes[name].widthMm, sheetSizes[name].heightMm]).toEqual([width, height]);
  });

  it.each([
    ['a3', 'a2'],
    ['a4', 'a3'],
    ['a5', 'a4'],
  ] as const)('%s is half of %s, rounded down to the millimetre', (half, whole) => {
    expect(sheetSizes[half].heightMm).toBe(sheetSizes[whole].widthMm);
    expect(sheetSizes[half].widthMm).toBe(Math.floor(sheetSizes[whole].heightMm / 2));
  });
});

/* PWG 5101.1, Media Standardized Names: a name ends in the size itself. Keywords as in the table of CUPS. */
describe('names of the Printer Working Group', () => {
  it.each([
    ['letter', 'na_letter_8.5x11in'],
    ['legal', 'na_legal_8.5x14in'],
    ['tabloid', 'na_ledger_11x17in'],
    ['superB', 'na_super-b_13x19in'],
    ['a5', 'iso_a5_148x210mm'],
    ['a4', 'iso_a4_210x297mm'],
    ['a3', 'iso_a3_297x420mm'],
    ['a2', 'iso_a2_420x594mm'],
  ] as const)('%s is %s', (name, media) => expect(sheetSizes[name].media).toBe(media));

  it.each(all)('the size of %s is the one its name says', (_, { media, widthMm, heightMm }) => {
    const [, width, height, unit] = /_([\d.]+)x([\d.]+)(in|mm)$/.exec(media) ?? [];
    const factor = unit === 'in' ? 25.4 : 1;
    expect(widthMm).toBeCloseTo(Number(width) * factor, 9);
    expect(heightMm).toBeCloseTo(Number(height) * factor, 9);
  });

  it('Super B is 330.2 × 482.6 mm', () => {
    expect(sheetSizes.superB.widthMm).toBeCloseTo(330.2, 9);
    expect(sheetSizes.superB.heightMm).toBeCloseTo(482.6, 9);
  });

  it('every sheet stands upright and is there once', () => {
    for (const [, { widthMm, heightMm }] of all) expect(widthMm).toBeLessThan(heightMm);
    expect(new Set(all.map(([, { media }]) => media)).size).toBe(all.length);
  });
});
