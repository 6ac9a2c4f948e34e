import type { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { priceTable, type TablePrice } from '@/lib/price/priceTable';
import { fromMinor } from '@/shared/money';
import type { JobInput } from '@/shared/schemas/request';
import { costed, grid } from '@/tests/fixtures/costed';
import { PATIENCE } from '@/tests/fixtures/drawnJobs';
import { type JobShape, randomJob } from '@/tests/fixtures/randomJob';
import { perSheetOf } from '@/tests/oracle/perSheetOf';
import { agrees, recomputeAlone } from '@/tests/oracle/recompute';
import { cases } from '@/tests/tools/cases';

const shapes: readonly JobShape[] = [
  { lines: 1, placements: 2, presses: 1, own: 'formulas' },
  { lines: 2, placements: 1, presses: 2, own: 'replaced' },
];
const { numRuns: JOBS, seed = Math.floor(Math.random() * 2 ** 31) } = cases(40);

/** The open break is looked at so many times as far as its first quantity. */
const BEYOND = 3;

interface Cell {
  /** Number of the job it belongs to. */
  readonly job: number;
  readonly cell: TablePrice;
  readonly input: JobInput;
  /** Target by quantity, from the recomputation in decimals. */
  readonly targets: ReadonlyMap<number, Decimal>;
}

const cells: Cell[] = [];

beforeAll(() => {
  const starts = fc.sample(fc.tuple(fc.integer({ min: 2, max: 4 }), fc.integer({ min: 5, max: 9 })), {
    seed,
    numRuns: JOBS,
  });
  shapes.forEach((shape, half) => {
    fc.sample(randomJob(shape), { seed, numRuns: JOBS / 2 }).forEach((drawn, index) => {
      const breaks = [1, ...(starts[half * (JOBS / 2) + index] ?? [])];
      const { workshop } = drawn;
      const policy = { ...workshop.policy, breaks };
      // What is made to stock has breaks too where its line says so.
      const lines = drawn.job.lines.map((line) => ({ ...line, selling: 'capped' as const }));
      const input = { ...drawn, workshop: { ...workshop, policy }, job: { ...drawn.job, lines } };
      cells.push(...cellsOf(half * JOBS + index, breaks, input));
    });
  });
}, PATIENCE.timeout);

describe(`the price table of random jobs, PROPERTY_SEED=${seed}`, () => {
  it('is tried on ten cells a job or more', () => {
    expect(cells.length).toBeGreaterThanOrEqual(10 * JOBS);
  });

  it('has the target that the recomputation in decimals has for the quantity it is made for', () => {
    for (const { cell, input, targets } of cells) {
      const wanted = targets.get(cell.pricedAt) ?? targetAt(cell, input);
      expect(
        wanted !== undefined && agrees(cell.target, wanted, false),
        `${cell.target}, not ${wanted}`,
      ).toBe(true);
    }
  });

  it('is priced at a quantity of the break', () => {
    for (const { cell } of cells) {
      expect(cell.pricedAt).toBeGreaterThanOrEqual(cell.from);
      expect(cell.pricedAt).toBeLessThanOrEqual(cell.to ?? Number.POSITIVE_INFINITY);
    }
  });

  it('asks in each break at least what any quantity of it needs, in every size', () => {
    for (const { job, cell, targets } of cells) {
      for (const [quantity, target] of targets) {
        if (quantity < cell.from || quantity > (cell.to ?? quantity)) continue;
        expect(
          cell.target,
          `job ${job}: ${cell.size} from ${cell.from} at ${quantity}`,
        ).toBeGreaterThanOrEqual(target.toNumber() * (1 - 1e-9));
      }
    }
  });

  it('writes no price below its target, tax inside where the channel says so', () => {
    for (const { cell, input } of cells) {
      const [channel] = input.workshop.channels;
      const taxed = channel?.taxMode === 'inside' ? 1 + (channel.tax?.value ?? 0) : 1;
      const written = fromMinor(cell.price, input.workshop.currency);
      expect(written).toBeGreaterThanOrEqual(cell.target * taxed * (1 - 1e-11));
    }
  });

  it('keeps at least the margin aimed for at the price it writes', () => {
    for (const { cell, input } of cells) {
      const aimed = input.workshop.rates.targetMargin?.value ?? 0;
      expect(cell.margin).toBeGreaterThanOrEqual(aimed - 1e-9);
    }
  });

  it('names as up-charge what a size adds to the one that adds nothing, in every break alike', () => {
    const rowOf = ({ cell, job }: Cell) => `${job} ${cell.lineId} ${cell.from}`;
    const bases = new Map<string, number>();
    for (const one of cells) if (one.cell.upCharge === 0) bases.set(rowOf(one), one.cell.price);
    for (const one of cells)
      expect(one.cell.upCharge).toBe(one.cell.price - (bases.get(rowOf(one)) ?? Number.NaN));
    const charges = new Map<string, Set<number>>();
    for (const { job, cell } of cells) {
      const key = `${job} ${cell.lineId} ${cell.size}`;
      charges.set(key, (charges.get(key) ?? new Set()).add(cell.upCharge));
    }
    for (const charge of charges.values()) expect(charge.size).toBe(1);
  });
});

/** For a quantity beyond those that are looked at for every cell. */
function targetAt({ lineId, size, pricedAt }: TablePrice, input: JobInput): Decimal | undefined {
  const batch = recomputeAlone(input, perSheetOf(costed(input)), { lineId, batch: pricedAt });
  return batch.get(size)?.target;
}

function cellsOf(number: number, breaks: readonly number[], input: JobInput): readonly Cell[] {
  const job = costed(input);
  const perSheet = perSheetOf(job);
  const last = Math.max(...breaks) * BEYOND;
  const targets = new Map<string, Map<number, Decimal>>();
  for (const { id: lineId } of input.job.lines) {
    for (let batch = 1; batch <= last; batch += 1) {
      for (const [size, { target }] of recomputeAlone(input, perSheet, { lineId, batch })) {
        const known = targets.get(`${lineId} ${size}`) ?? new Map<number, Decimal>();
        if (target !== undefined) targets.set(`${lineId} ${size}`, known.set(batch, target));
      }
    }
  }
  return priceTable(job, grid).map((cell) => ({
    job: number,
    cell,
    input,
    targets: targets.get(`${cell.lineId} ${cell.size}`) ?? new Map(),
  }));
}
