import { costInput } from '@/lib/costing/costInput';
import { type CostedJob, costJob } from '@/lib/grid/costJob';
import { type CostSheet, caseValue, wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { OwnRow } from '@/shared/schemas/ownRow';
import type { JobInput } from '@/shared/schemas/request';
import type { StallGoods } from '@/shared/schemas/stallDay';

type LaidOut = CostedJob['laidOut'];

/** What one more piece of some goods costs and gives away. Currency units. */
export interface PieceCosts {
  /** Material, minutes, wear, power, and own rows that come with each piece; no packaging, no overhead. */
  readonly cost: number;
  /** The same with the overhead of its minutes. */
  readonly costWithOverhead: number;
  /** What of it is bought. */
  readonly cash: number;
  readonly packaging: number;
  /** Fees as a share of the price without tax, and the piece's part of what each card ticket costs. */
  readonly feeShare: number;
  readonly cardFixed: number;
}

/** What making a plan costs once, whatever is sold. Currency units. */
export interface BatchCosts {
  /** All but the cost of its pieces and their packaging. */
  readonly once: number;
  readonly benchHours: number;
  /** Own pay of those hours. */
  readonly benchPay: number;
  /** Materials of pieces and sessions. */
  readonly cash: number;
}

/** The same of one job. */
export interface JobBatch extends BatchCosts {
  /** Each line's part of what is spent once, by its id. */
  readonly onceOfLines: ReadonlyMap<string, number>;
}

export interface MakingCosts {
  readonly currency: string;
  readonly pieces: ReadonlyMap<string, PieceCosts>;
  /**
   * @param pressed pieces to press of some goods
   * @throws UnsummedBatch where the sums of so many give no number
   */
  readonly batch: (pressed: (goods: StallGoods) => number) => JobBatch;
}

/** A formula of the maker's own that gives a number for a piece and none for a batch. */
class UnsummedBatch extends RangeError {
  override readonly name = 'UnsummedBatch';
  constructor(jobId: string) {
    super(`the sums of job ${jobId} give no number for what is pressed`);
  }
}

/** Own rows that one more piece does not raise. */
const onceDrivers: readonly string[] = ['order', 'design', 'session'];

/** Numbers of pieces whose sums a job keeps: a maker tries a few, and goes back. */
const KEPT_PLANS = 100;

const nothing: JobBatch = { once: 0, benchHours: 0, benchPay: 0, cash: 0, onceOfLines: new Map() };

/**
 * What making goods of a job costs. Sheets count by what pieces take of them: whether one more fills a sheet or begins
 * one hangs on the rest of the plan, and what is left of the last is printed with other work.
 *
 * @param input as `jobForStall` makes it
 * @returns null where a stop stands or a sum gives no number
 */
export function makingCosts(jobId: string, input: JobInput, grid: Grid): MakingCosts | null {
  const costed = costInput(input, grid);
  if (costed === null) return null;
  const each = costJob(
    withPieces(costed.laidOut, () => null),
    grid,
  );
  if (each.kind === 'faulty') return null;
  const { sheet } = each.job;
  const { ownRows } = costed.laidOut.job;
  const pieces = new Map(
    sheet.cases.map(({ lineId, size }, at) => [
      goodsKey({ jobId, lineId, size }),
      pieceCosts(sheet, ownRows, at),
    ]),
  );
  const batch = (pressed: (goods: StallGoods) => number): JobBatch => {
    const laidOut = withPieces(costed.laidOut, (lineId, size) => pressed({ jobId, lineId, size }));
    if (laidOut.job.lines.length === 0) return nothing;
    const made = costJob(laidOut, grid);
    if (made.kind === 'faulty') throw new UnsummedBatch(jobId);
    return batchCosts(made.job.sheet, pieces, jobId);
  };
  return { currency: sheet.currency, pieces, batch: onceEach(batch, sheet.cases, jobId) };
}

// Helpers

/** Plans differ in some goods only: a job whose pieces are the same is not put through the grid again. */
function onceEach(
  batch: MakingCosts['batch'],
  cases: CostSheet['cases'],
  jobId: string,
): MakingCosts['batch'] {
  const known = new Map<string, JobBatch>();
  return (pressed) => {
    const key = cases.map(({ lineId, size }) => pressed({ jobId, lineId, size })).join();
    const found = known.get(key) ?? batch(pressed);
    known.delete(key);
    known.set(key, found);
    const oldest = known.keys().next();
    if (known.size > KEPT_PLANS && oldest.done !== true) known.delete(oldest.value);
    return found;
  };
}

/**
 * The job with other numbers of pieces, its sheets taken in shares.
 *
 * @param piecesOf null leaves the number, and plans no test presses
 */
function withPieces(laidOut: LaidOut, piecesOf: (lineId: string, size: string) => number | null): LaidOut {
  const lines = laidOut.job.lines.flatMap((line) => {
    const wanted = line.sizes.map((size) => piecesOf(line.line.id, size.size));
    const sizes = line.sizes
      .map((size, at) => ({ ...size, quantity: wanted[at] ?? size.quantity }))
      .filter(({ quantity }) => quantity > 0);
    if (sizes.length === 0) return [];
    const placements = wanted.every((pieces) => pieces === null)
      ? line.placements.map((one) => ({ ...one, placement: { ...one.placement, testPresses: 0 } }))
      : line.placements;
    return [{ ...line, sizes, placements }];
  });
  const piecesOfLine = new Map(
    lines.map(({ line, sizes }) => [line.id, sizes.reduce((sum, { quantity }) => sum + quantity, 0)]),
  );
  // As many as fill every sheet, whatever is made.
  const prints = laidOut.prints.map((print) =>
    print.ganged === undefined
      ? { ...print, pieces: (piecesOfLine.get(print.lineId) ?? 0) * print.perSheet }
      : print,
  );
  return { ...laidOut, job: { ...laidOut.job, lines }, prints };
}

function pieceCosts(sheet: CostSheet, ownRows: readonly OwnRow[], at: number): PieceCosts {
  const value = (rowId: string) => caseValue(sheet, rowId, at);
  const own = ownRows.filter(({ cost }) => cost.kind === 'formula' || !onceDrivers.includes(cost.driver));
  const ownOf = (rows: readonly OwnRow[]) => rows.reduce((sum, { id }) => sum + value(id), 0);
  const cost = value('incrementalCost') + ownOf(own);
  return {
    cost,
    costWithOverhead: cost + (value('runTime') / 60) * jobValue(sheet, 'overheadRate'),
    cash:
      value('reprintMaterials') -
      value('inkSession') * jobInput(sheet, 'inkPrice') +
      ownOf(own.filter(({ outOfPocket }) => outOfPocket)),
    packaging: value('packaging'),
    feeShare: jobValue(sheet, 'feeShare'),
    cardFixed: jobValue(sheet, 'cardTickets') * jobInput(sheet, 'cardFixedFee'),
  };
}

function batchCosts(sheet: CostSheet, pieces: ReadonlyMap<string, PieceCosts>, jobId: string): JobBatch {
  const whole = (rowId: string) => wholeJob(sheet, rowId);
  const costOf = (lineId: string, size: string) => pieces.get(goodsKey({ jobId, lineId, size }))?.cost ?? 0;
  const ofPieces = sheet.cases.reduce(
    (sum, { lineId, size, quantity }) => sum + quantity * costOf(lineId, size),
    0,
  );
  const onceOfLines = new Map<string, number>();
  for (const [at, { lineId, size, quantity }] of sheet.cases.entries()) {
    const value = (rowId: string) => caseValue(sheet, rowId, at);
    const each = value('fullCost') - value('reprints') - value('packaging') - value('delivery');
    const before = onceOfLines.get(lineId) ?? 0;
    onceOfLines.set(lineId, before + quantity * (each - costOf(lineId, size)));
  }
  return {
    once: sheet.fullCost - whole('reprints') - whole('packaging') - whole('delivery') - ofPieces,
    onceOfLines,
    benchHours: whole('attended') / 60,
    benchPay: whole('labourExpected'),
    cash:
      whole('blanksExpected') +
      whole('paperExpected') +
      whole('inkExpected') +
      whole('suppliesExpected') +
      whole('ownCash'),
  };
}

function jobValue(sheet: CostSheet, rowId: string): number {
  const value = sheet.jobValues[rowId];
  if (value === undefined) throw new RangeError(`the cost sheet has no value for ${rowId}`);
  return value;
}

function jobInput(sheet: CostSheet, name: string): number {
  const input = sheet.inputs.job[name];
  if (input === undefined) throw new RangeError(`the cost sheet was given no ${name}`);
  return input.value;
}
