import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clubOrder } from '@/lib/examples/clubOrder';
import type { JobInput } from '@/shared/schemas/request';
import { aPicture } from '@/tests/fixtures/aPicture';
import { costed } from '@/tests/fixtures/costed';
import { fixedRate, typed } from '@/tests/fixtures/numbers';
import { type JobShape, randomJob } from '@/tests/fixtures/randomJob';
import { ownRowSets } from '@/tests/fixtures/randomOwnRows';
import { cases, patience } from '@/tests/tools/cases';
import { disagreements } from './disagreements';

/*
 * Random jobs, worked out by the formula grid and anew in fifty-digit decimals from the model in
 * words. A shape is one workbook: fast-check shrinks inside it without building another.
 */
const shapes = [1, 2, 3].flatMap((lines) =>
  [1, 2, 3, 4].flatMap((placements) =>
    ([1, 2] as const)
      .filter((presses) => lines * placements >= presses)
      .map((presses): JobShape => {
        const own = ownRowSets[(lines + placements + presses) % ownRowSets.length] ?? 'none';
        return { lines, placements, presses, own };
      }),
  ),
);
const JOBS = 480;
const perShape = Math.ceil(JOBS / shapes.length);

const titled = shapes.map(
  (shape) =>
    [
      `${shape.lines} line(s), up to ${shape.placements} placement(s), ${shape.presses} press(es), own rows: ${shape.own}`,
      shape,
    ] as const,
);

/** Two busy cores take several seconds for one shape. */
const PATIENCE_MS = patience(60_000);

describe('the grid and the recomputation in decimals agree in every cell to 1e-9', () => {
  it.each(titled)(`%s: ${perShape} jobs`, { timeout: PATIENCE_MS }, (_, shape) => {
    fc.assert(
      fc.property(randomJob(shape), (input) => {
        expect(disagreements(input, costed(input))).toEqual([]);
      }),
      cases(perShape),
    );
  });
});

/** The artworks that were typed by channel as pictures that were read, printed by a printer with this share of black. */
function asRead(input: JobInput, blackShare: number): JobInput {
  const artworks = Object.entries(input.artworks).map(([id, artwork]) => {
    if (artwork.coverage?.kind !== 'channels') return [id, artwork] as const;
    const { kind: _, ...coverage } = artwork.coverage;
    return [
      id,
      { ...artwork, coverage: null, picture: aPicture({ width: 4000, height: 5000, coverage }) },
    ] as const;
  });
  const printers = input.workshop.printers.map((printer) => ({
    ...printer,
    blackShare: fixedRate(blackShare, 'share'),
  }));
  return { ...input, artworks: Object.fromEntries(artworks), workshop: { ...input.workshop, printers } };
}

describe('they agree on the ink of pictures that were read, whatever the printer prints with black', () => {
  const shape: JobShape = { lines: 2, placements: 2, presses: 2, own: 'none' };
  it(`${perShape} jobs`, { timeout: PATIENCE_MS }, () => {
    fc.assert(
      fc.property(randomJob(shape), typed(0, 1), (drawn, share) => {
        const input = asRead(drawn, share);
        expect(disagreements(input, costed(input))).toEqual([]);
      }),
      cases(perShape),
    );
  });
});

describe('the comparison', () => {
  const day = '2026-11-25';
  const input = clubOrder(day, day);
  const job = costed(input);
  const { sheet } = job;

  it('finds nothing in the worked example', () => {
    expect(disagreements(input, job)).toEqual([]);
  });

  it('finds a single cell that is off by two parts in a thousand million', () => {
    const wear = (sheet.values.wear ?? []).map((value, index) =>
      index === 2 && value !== null ? value * (1 + 2e-9) : value,
    );
    const altered = { ...job, sheet: { ...sheet, values: { ...sheet.values, wear } } };
    expect(disagreements(input, altered)).toEqual([expect.stringMatching(/^wear of shirts L: 0\.0789/)]);
  });

  it('finds a row that the recomputation does not know', () => {
    const [row] = sheet.rows.filter(({ id }) => id === 'wear');
    const unknown = { ...row, id: 'newRow' } as (typeof sheet.rows)[number];
    const rows = { ...job, sheet: { ...sheet, rows: [...sheet.rows, unknown] } };
    expect(disagreements(input, rows).length).toBeGreaterThan(0);
  });

  it('finds a case that is missing', () => {
    const fewer = { ...job, sheet: { ...sheet, cases: sheet.cases.slice(0, -1) } };
    expect(disagreements(input, fewer)).toContain('5 cases and not 6');
  });
});
