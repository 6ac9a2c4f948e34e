import type { CheckedJob } from '@/lib/job/checkedJob';
import { piecesOfJob } from '@/lib/job/piecesOfJob';
import { splitWhole } from '@/shared/splitWhole';
import type { GangedShare, KnownBatch, LaidOutPrint } from './laidOutPrint';
import { questionOf, type SharedQuestion } from './sharedQuestion';

/** Fewer batches than this make no curve worth reading, more no curve worth waiting for. */
const LEAST_TO = 100;
const MOST_TO = 500;

/** One by one where each takes another sheet, then what orders are made by: some 40 packings, about a second at most. */
const PACKED = [
  ...Array.from({ length: 12 }, (_, index) => index + 1),
  ...[15, 18, 20, 24, 25, 30, 36, 40, 48, 50, 60, 70, 72, 75, 80, 84, 90, 96, 100],
  ...[120, 144, 150, 200, 250, 300, 350, 400, 450, 500],
];

/** By what a batch is known that was counted and is never drawn: its layout is no answer for a job of that size. */
export const batchKey = ({ key }: Pick<SharedQuestion, 'key'>): string => `batch ${key}`;

/** @returns the last batch of a curve: twice the asked one, 100 at least and 500 at most. */
export const lastBatch = (asked: number): number =>
  Math.min(MOST_TO, Math.max(LEAST_TO, Math.ceil(2 * asked)));

/** A batch of the whole job in whole pieces, with what is asked of its sheets. */
interface Batch {
  readonly n: number;
  /** Of each size of each line. */
  readonly mix: readonly number[];
  /** What its prints need each by itself. */
  readonly apart: number;
  /** Null where one print alone has any piece. */
  readonly question: SharedQuestion | null;
}

/**
 * The batches of a job whose sheets are worth packing anew, beside the one that is laid out.
 *
 * @param sharing its prints that share sheets, laid out each by itself
 * @returns none on a roll, where a batch is a length and not a number of sheets
 */
export function batchesOf(job: CheckedJob, sharing: readonly LaidOutPrint[]): readonly Batch[] {
  if (job.sheet.form === 'roll') return [];
  const asked = piecesOfJob(job);
  return PACKED.filter((n) => n <= lastBatch(asked) && n !== asked).map((n) => batchOf(job, sharing, n));
}

/**
 * Sheets of the batches that were packed: never more than the batch laid out as often as needed, nor than a packed one
 * that holds all their pieces, and no fewer than those of a smaller one.
 *
 * @param count sheets of the batch laid out
 * @returns rising, the batch laid out among them; none where no other was packed
 */
export function knownBatches(
  job: CheckedJob,
  sharing: readonly LaidOutPrint[],
  count: number,
): readonly KnownBatch[] {
  const { layouts } = job;
  if (layouts === undefined) return [];
  const asked = piecesOfJob(job);
  const packed = batchesOf(job, sharing).flatMap(({ n, mix, apart, question }) => {
    const known = question === null ? apart : layouts[batchKey(question)]?.count;
    const often = Math.ceil(n / asked) * count;
    return known === undefined ? [] : [{ n, mix, sheets: Math.min(known, apart, often), question }];
  });
  if (packed.every(({ question }) => question === null)) return [];
  const held = packed.map((batch) => ({
    n: batch.n,
    sheets: Math.min(...packed.filter((other) => holds(other, batch)).map(({ sheets }) => sheets)),
  }));
  let most = 0;
  return [...held, { n: asked, sheets: count }]
    .sort((a, b) => a.n - b.n)
    .map(({ n, sheets }) => {
      most = Math.max(most, sheets);
      return { n, sheets: most };
    });
}

/**
 * Sheets of a batch of the whole job: of one that was packed as they were found, of another to fill its sheets as well
 * as the batch laid out, but no fewer than the packed batch below it takes and no more than the one above.
 *
 * @param filled how many sheets that would be at the fill of the batch laid out
 */
export function sheetsOfBatch({ batches = [] }: GangedShare, n: number, filled: number): number {
  const least = batches.findLast((batch) => batch.n <= n)?.sheets ?? 0;
  const most = batches.find((batch) => batch.n >= n)?.sheets ?? Number.POSITIVE_INFINITY;
  return Math.min(most, Math.max(least, Math.ceil(filled - 1e-9)));
}

// Helpers

function batchOf(job: CheckedJob, sharing: readonly LaidOutPrint[], n: number): Batch {
  const asked = piecesOfJob(job);
  const mix = splitWhole(
    n,
    job.lines.flatMap(({ sizes }) => sizes.map(({ quantity }) => (quantity * n) / asked)),
  );
  const cells = job.lines
    .flatMap(({ line, sizes }) => sizes.map(({ size }) => ({ lineId: line.id, size })))
    .map((cell, index) => ({ ...cell, pieces: mix[index] ?? 0 }));
  const prints = sharing.flatMap((print) => {
    const pieces = cells
      .filter(({ lineId, size }) => lineId === print.lineId && print.sizes.includes(size))
      .reduce((sum, cell) => sum + cell.pieces, 0);
    return pieces === 0 ? [] : [{ ...print, pieces, sheets: Math.ceil(pieces / print.perSheet) }];
  });
  return {
    n,
    mix,
    apart: prints.reduce((sum, { sheets }) => sum + sheets, 0),
    question: questionOf(job, prints),
  };
}

const holds = (larger: Pick<Batch, 'mix'>, smaller: Pick<Batch, 'mix'>): boolean =>
  smaller.mix.every((pieces, index) => pieces <= (larger.mix[index] ?? 0));
