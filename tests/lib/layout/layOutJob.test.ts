import { describe, expect, it } from 'vitest';
import { clubOrder } from '@/lib/examples/clubOrder';
import { PrintDoesNotFit } from '@/lib/layout/layOutJob';
import { piecesPerSheet } from '@/lib/packing/equal/piecesPerSheet';
import type { Placement } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';
import { mmFromInches } from '@/shared/units';
import { laidOut } from '@/tests/fixtures/costed';

const club = clubOrder('2026-11-25', '2026-12-11');

const withPrints = (
  prints: Placement['prints'],
  printer: { readonly borderless?: boolean } = {},
): JobInput => ({
  ...club,
  workshop: {
    ...club.workshop,
    printers: club.workshop.printers.map((one) => ({ ...one, ...printer })),
  },
  job: {
    ...club.job,
    lines: club.job.lines.map((line) => ({
      ...line,
      placements: line.placements.map((one) => (one.id === 'badge' ? { ...one, prints } : one)),
    })),
  },
});

const inches = (width: number, height: number, sizes: string[] | null = null) => ({
  sizes,
  widthMm: mmFromInches(width),
  heightMm: mmFromInches(height),
});

const badges = (input: JobInput) =>
  laidOut(input).prints.filter(({ placementId }) => placementId === 'badge');

/* By hand on a letter sheet with 0.125 in of margin and 0.25 in between: floor((8.25 + 0.25) ÷ (w + 0.25)) and so on. */
describe('a letter sheet holds', () => {
  it.each([
    ['three mug strips of 8.0 × 3.4 in', 8, 3.4, 3],
    ['two of 8.0 × 3.5 in', 8, 3.5, 2],
    ['six badges of 3.4 in', 3.4, 3.4, 6],
    ['four of 3.5 in', 3.5, 3.5, 4],
    ['one back picture of 8.0 × 10.0 in', 8, 10, 1],
    ['none of 10.5 × 12.5 in', 10.5, 12.5, 0],
  ])('%s', (_, width, height, count) => {
    const answer = piecesPerSheet({
      sheetWidthMm: mmFromInches(8.5),
      sheetHeightMm: mmFromInches(11),
      marginMm: mmFromInches(0.125),
      gutterMm: mmFromInches(0.25),
      pieceWidthMm: mmFromInches(width),
      pieceHeightMm: mmFromInches(height),
    });
    expect(answer.count).toBe(count);
  });
});

describe('the layout of a job', () => {
  it('takes ten sheets for thirty-seven badges, four to a sheet, three places left', () => {
    expect(badges(club)).toMatchObject([{ pieces: 37, perSheet: 4, sheets: 10, spare: 3 }]);
  });

  it('counts sizes with a print of their own on sheets of their own', () => {
    // S and M are 13 on 6 to a sheet, the other 24 on 4.
    const prints = [inches(3.4, 3.4, ['S', 'M']), inches(3.5, 3.5)];
    expect(badges(withPrints(prints))).toMatchObject([
      { sizes: ['S', 'M'], pieces: 13, perSheet: 6, sheets: 3, spare: 5 },
      { sizes: ['L', 'XL', '2XL', '3XL'], pieces: 24, perSheet: 4, sheets: 6, spare: 0 },
    ]);
  });

  it('leaves out a print that no piece of the job carries', () => {
    const prints = [inches(3.4, 3.4, ['5XL']), inches(3.5, 3.5)];
    expect(badges(withPrints(prints)).map(({ print }) => print)).toEqual([1]);
  });

  it('goes to the edge where only that fits and the printer can', () => {
    const prints = [inches(8.5, 11)];
    expect(badges(withPrints(prints, { borderless: true }))).toMatchObject([{ perSheet: 1, sheets: 37 }]);
    expect(() => badges(withPrints(prints, { borderless: false }))).toThrow(PrintDoesNotFit);
  });

  it('names the sizes that do not fit', () => {
    expect(() => badges(withPrints([inches(10.5, 12.5)]))).toThrow(/266\.7 × 317\.5 mm does not fit 215/);
  });
});
