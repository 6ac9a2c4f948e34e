import type { GapLine } from '@/shared/schemas/making/runEvents';
import type { GapCause } from '@/shared/tables/faults';
import type { RunResult } from './runResult';

/** A run that is closed, with what it left. */
export interface ClosedRun {
  readonly runId: string;
  readonly name: string;
  /** YYYY-MM-DD. */
  readonly closedOn: string;
  readonly result: RunResult;
}

/** One line of the bridge over several runs of one currency. */
interface LineOverRuns {
  readonly line: GapLine;
  /** Whole minor units, all runs together. */
  readonly minor: number;
  /** Runs in which it cost something. */
  readonly against: number;
  readonly runs: number;
  /** The commonest first. */
  readonly causes: readonly { readonly cause: GapCause; readonly runs: number }[];
}

/** @returns what keeps going wrong, what cost most first; lines that never did are left out */
export function linesOverRuns(closed: readonly ClosedRun[]): readonly LineOverRuns[] {
  const lines = new Map<GapLine, { minor: number; against: number; causes: Map<GapCause, number> }>();
  for (const { result } of closed) {
    for (const { line, minor, cause } of result.bars) {
      const row = lines.get(line) ?? { minor: 0, against: 0, causes: new Map<GapCause, number>() };
      row.minor += minor;
      if (minor < 0) row.against += 1;
      if (minor < 0 && cause !== null) row.causes.set(cause.cause, (row.causes.get(cause.cause) ?? 0) + 1);
      lines.set(line, row);
    }
  }
  return [...lines]
    .filter(([, { against }]) => against > 0)
    .map(([line, { minor, against, causes }]) => ({
      ...{ line, minor, against, runs: closed.length },
      causes: [...causes]
        .map(([cause, runs]) => ({ cause, runs }))
        .toSorted((one, other) => other.runs - one.runs),
    }))
    .toSorted((one, other) => one.minor - other.minor);
}
