import { describe, expect, it } from 'vitest';
import { plannedSheets } from '@/lib/layout/plannedSheets';
import { stripCuts } from '@/lib/layout/stripCuts';
import type { JobInput } from '@/shared/schemas/request';
import { mmFromInches } from '@/shared/units';
import { clubWith } from '@/tests/fixtures/clubJob';
import { laidOut } from '@/tests/fixtures/costed';

const back = (widthIn: number, heightIn: number, fields: Record<string, unknown> = {}) =>
  clubWith({
    'job.lines.0.placements.0.prints': [
      { sizes: null, widthMm: mmFromInches(widthIn), heightMm: mmFromInches(heightIn) },
    ],
    ...fields,
  });

/** Corners in inches of the pieces on each kind of sheet of a placement. */
const corners = (input: JobInput, placementId: string) =>
  plannedSheets(laidOut(input))
    .sheets.filter(({ pieces }) => pieces[0]?.placementId === placementId)
    .map(({ count, pieces }) => ({
      count,
      at: pieces.map(({ xMm, yMm }) => [xMm, yMm].map((mm) => Number((mm / 25.4).toFixed(6)))),
    }));

/* By hand on letter paper, 8.5 × 11 in, border 0.125 in, 0.25 in between pieces. */
describe('what is free lies around the pieces', () => {
  it('on both sides of a lone print: (8.5 − 8) ÷ 2 and (11 − 10) ÷ 2', () => {
    expect(corners(back(8, 10), 'back')).toEqual([{ count: 37, at: [[0.25, 0.5]] }]);
  });

  it('on both sides of a grid, whose gutters stay as asked; the last sheet keeps its places', () => {
    // Two of 3.5 in and a gutter are 7.25 in: (8.5 − 7.25) ÷ 2 = 0.625, (11 − 7.25) ÷ 2 = 1.875, and 3.75 on.
    const full = [
      [0.625, 1.875],
      [4.375, 1.875],
      [0.625, 5.625],
      [4.375, 5.625],
    ];
    expect(corners(clubWith({}), 'badge')).toEqual([
      { count: 9, at: full },
      { count: 1, at: full.slice(0, 1) },
    ]);
  });

  it.each([
    // (8.5 − 3.5) ÷ 2 and (11 − 3.5) ÷ 2; two side by side lie in the row of a grid.
    [1, [[2.5, 3.75]]],
    [
      2,
      [
        [0.625, 3.75],
        [4.375, 3.75],
      ],
    ],
  ])('of the only sheet there is, for %d of four places', (quantity, at) => {
    const input = clubWith({
      'job.lines.0.orderedQuantity': null,
      'job.lines.0.quantities': [{ size: 'L', quantity }],
    });
    expect(corners(input, 'badge')).toEqual([{ count: 1, at }]);
  });

  it('of a print without borders too', () => {
    const input = back(8.3, 11, { 'workshop.printers.0.borderless': true });
    expect(corners(input, 'back')).toEqual([{ count: 37, at: [[0.1, 0]] }]);
  });

  it('across a roll only, where a print begins behind its border', () => {
    // Six of 3.5 in and five gutters across 24 in: (24 − 22.25) ÷ 2 = 0.875.
    const input = clubWith({
      'workshop.sheets.0.form': 'roll',
      'workshop.sheets.0.widthMm': mmFromInches(24),
      'workshop.sheets.0.heightMm': 1000,
      'workshop.sheets.0.price': { value: 1, unit: 'money/m', date: '2026-11-25', origin: 'yours' },
    });
    expect(corners(input, 'badge')[0]?.at.slice(0, 7)).toEqual([
      ...[0, 1, 2, 3, 4, 5].map((place) => [0.875 + 3.75 * place, 0.125]),
      [0.875, 3.875],
    ]);
  });

  it('where it is of use: a lone print lies the way round that leaves room for tape', () => {
    // Upright 8.2 × 7 in leaves 0.15 in beside it; turned 0.75 in, and (11 − 8.2) ÷ 2 = 1.4 in above.
    const [sheet] = plannedSheets(laidOut(back(8.2, 7))).sheets;
    expect(sheet?.pieces).toEqual([
      expect.objectContaining({
        turned: true,
        xMm: expect.closeTo(mmFromInches(0.75), 8),
        yMm: expect.closeTo(mmFromInches(1.4), 8),
        widthMm: mmFromInches(7),
      }),
    ]);
    // Both ways leave enough: upright is plainer.
    expect(plannedSheets(laidOut(back(8, 7))).sheets[0]?.pieces[0]?.turned).toBe(false);
  });
});

describe('a roll is cut straight across', () => {
  const piece = (xMm: number, yMm: number, widthMm: number, heightMm: number) => ({
    xMm,
    yMm,
    widthMm,
    heightMm,
    turned: false,
  });

  it('in the middle of each gap that no piece reaches into', () => {
    // The first row ends at 50 and 60, the next begins at 66; a long piece then bridges 96 to 102.
    const pieces = [
      piece(0, 10, 100, 40),
      piece(106, 10, 50, 50),
      piece(0, 66, 100, 30),
      piece(106, 66, 50, 90),
      piece(0, 102, 100, 20),
      piece(0, 170, 100, 20),
    ];
    expect(stripCuts(pieces, 6)).toEqual([63, 163]);
  });

  it('not where one side would be left less paper than between two pieces', () => {
    expect(stripCuts([piece(0, 0, 50, 20), piece(60, 23, 50, 20)], 6)).toEqual([]);
    expect(stripCuts([piece(0, 0, 50, 20), piece(60, 26, 50, 20)], 6)).toEqual([23]);
  });
});
