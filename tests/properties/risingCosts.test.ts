import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import { rateNames } from '@/shared/tables/rateCatalogue';
import { costed } from '@/tests/fixtures/costed';
import { type DrawnJob, type DrawnJobs, drawJobs, hold, PATIENCE } from '@/tests/fixtures/drawnJobs';

/*
 * Raising any cost, minute or loss never lowers full cost. Hours of the year, resale and lives of machines are no
 * costs: more of them makes a job cheaper. The margin aimed for is in no cost.
 */
const notCosts = ['overheadHours', 'targetMargin'];

/** Places of the figures that are raised; a star stands for every entry. */
const levers: readonly string[] = [
  ...rateNames.filter((name) => !notCosts.includes(name)).map((name) => `*.rates.${name}`),
  'workshop.printers.*.powerKw',
  'workshop.printers.*.unattendedMinutesPerSheet',
  'workshop.printers.*.price',
  'workshop.presses.*.powerKw',
  'workshop.presses.*.warmUpMinutes',
  'workshop.presses.*.holdingShare',
  'workshop.presses.*.price',
  'workshop.presses.*.partsPrice',
  'workshop.presses.*.protectivePaper',
  'workshop.presses.*.tape',
  'workshop.sheets.*.price',
  'workshop.packagings.*.perPiece',
  '*.ownRows.*.cost.amount',
  'blanks.*.sizes.*.price',
  'blanks.*.blankFault',
  'blanks.*.finishMinutes',
  'artworks.*.prepMinutes',
  'artworks.*.coverage.total',
  'job.freightIn',
  'job.deliveryKm',
  'job.lines.*.placements.*.scrap',
  'job.lines.*.placements.*.handMinutes',
  'job.lines.*.placements.*.aloneMinutes',
  'job.lines.*.placements.*.hotMinutes',
  'job.lines.*.placements.*.testPresses',
];

const JOBS = 300;
/** So many more jobs are tried with a cost that none of its own showed. */
const MORE = 40;
let drawn: DrawnJobs = { seed: 0, jobs: [] };

beforeAll(() => {
  drawn = drawJobs(JOBS);
}, PATIENCE.timeout);

describe('full cost never falls', () => {
  it(
    `when one of ${levers.length} costs, minutes or losses rises, each in turn on ${JOBS} jobs`,
    PATIENCE,
    () => {
      const steps = fc.sample(fc.integer({ min: 1, max: 9 }), {
        seed: drawn.seed,
        numRuns: drawn.jobs.length,
      });
      const rose = new Set<string>();
      const raise = ({ input, job }: DrawnJob, index: number, lever: string) => {
        const after = costed(raisedAt(input, lever, steps[index] ?? 1)).sheet.fullCost;
        const before = job.sheet.fullCost;
        expect(after, `${lever} rose`).toBeGreaterThanOrEqual(before * (1 - 1e-12));
        if (after > before) rose.add(lever);
      };
      hold(drawn, (one, index) => raise(one, index, levers[index % levers.length] ?? ''));
      // Not every job has every cost: those not seen yet are tried on jobs of all shapes until one shows them.
      const apart = Math.ceil(drawn.jobs.length / MORE);
      for (const lever of levers) {
        hold(drawn, (one, index) => {
          if (!rose.has(lever) && index % apart === 0) raise(one, index, lever);
        });
      }
      // Nobody is paid for what a press or the printer does alone; its time and power cost all the same.
      const free = levers.filter((lever) => !rose.has(lever));
      expect(free).toEqual(['job.lines.*.placements.*.aloneMinutes']);
    },
  );
});

/** The same job with all figures at a place raised by tenths; one that is missing stays so. */
function raisedAt(input: JobInput, place: string, tenths: number): JobInput {
  return jobInputSchema.parse(walk(input, place.split('.'), tenths));
}

function walk(value: unknown, [key, ...rest]: readonly string[], tenths: number): unknown {
  if (value === null || value === undefined) return value;
  if (key === undefined) return raised(value, tenths);
  if (Array.isArray(value)) return value.map((one) => walk(one, rest, tenths));
  if (typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, one]) => [
      name,
      key === '*' || key === name ? walk(one, rest, tenths) : one,
    ]),
  );
}

/** Shares stay under nine tenths; a plain number rises by one, coverage of at most four channels only up to there. */
function raised(value: unknown, tenths: number): unknown {
  if (typeof value === 'number') return value > 3 && value < 4 ? 4 : value + 1;
  const rate = value as { readonly value: number; readonly unit: string };
  const higher =
    rate.unit === 'share' ? Math.min(0.9, rate.value + tenths / 50) : rate.value * 1.1 + tenths / 10;
  return { ...rate, value: Math.max(rate.value, higher) };
}
