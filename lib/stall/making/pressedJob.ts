import { copiedJob } from '@/lib/drafts/copiedJob';
import { freeName } from '@/lib/drafts/freeName';
import type { Job, Line } from '@/shared/schemas/job';
import type { ToPress } from './toPress';

type LinePress = Pick<ToPress, 'lineId' | 'size' | 'press'>;

/** @returns pieces of a line that are to be pressed, by size; null where the stall day does not bring the line. */
function pressOf(line: Line, press: readonly LinePress[]): ReadonlyMap<string, number> | null {
  const own = press.filter(({ lineId }) => lineId === line.id);
  return own.length === 0 ? null : new Map(own.map((one) => [one.size, one.press]));
}

/** @returns whether the stall day brings the line and nothing of it is to be pressed. */
export function isIdle(line: Line, press: readonly LinePress[]): boolean {
  const own = pressOf(line, press);
  return own !== null && [...own.values()].every((pieces) => pieces === 0);
}

/** @returns the job with the quantities that are to be pressed; lines the stall day does not bring stay. */
export const jobWithPress = (job: Job, press: readonly LinePress[]): Job => ({
  ...job,
  lines: job.lines.map((line) => lineWithPress(line, press)),
});

interface CopyFor {
  /** Of the stall day. */
  readonly name: string;
  /** First day of selling; null where none is set. */
  readonly wantedOn: string | null;
  /** Names of all jobs. */
  readonly taken: readonly string[];
}

/**
 * @returns a job made to stock for a stall day alone, after one that is not to be changed: the lines that are to be
 *   pressed and no others, for a line without pieces stops a job; nothing of any customer
 */
export function copyToPress(
  design: Job,
  press: readonly LinePress[],
  { name, wantedOn, taken }: CopyFor,
): Job {
  const { job } = copiedJob(design, taken);
  return {
    ...job,
    name: freeName(`${design.name} for ${name}`, taken),
    customer: '',
    madeFor: 'stock',
    wantedOn,
    lines: design.lines.flatMap((line) =>
      pressOf(line, press) === null || isIdle(line, press)
        ? []
        : [{ ...lineWithPress(line, press), orderedQuantity: null, nameList: '' }],
    ),
  };
}

// Helpers

/** Sizes keep their places; one that the line never had comes last. */
function lineWithPress(line: Line, press: readonly LinePress[]): Line {
  const own = pressOf(line, press);
  if (own === null) return line;
  const known = line.quantities.map(({ size }) => size);
  const further = [...own].filter(([size, pieces]) => pieces > 0 && !known.includes(size));
  return {
    ...line,
    quantities: [
      ...known.map((size) => ({ size, quantity: own.get(size) ?? 0 })),
      ...further.map(([size, quantity]) => ({ size, quantity })),
    ],
  };
}
