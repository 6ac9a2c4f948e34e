import type { GapLine } from '@/shared/schemas/making/runEvents';
import type { RunResult } from './runResult';

/** What belongs together where it is told in one line. */
export type LossGroup = 'blanks' | 'paper' | 'ink' | 'labour' | 'overhead' | 'income' | 'rest';

const groupOf: Readonly<Record<GapLine, LossGroup>> = {
  output: 'income',
  revenue: 'income',
  blanksPrice: 'blanks',
  blanksUsage: 'blanks',
  paperPrice: 'paper',
  paperUsage: 'paper',
  inkUsage: 'ink',
  labour: 'labour',
  overhead: 'overhead',
  freight: 'rest',
  otherCost: 'rest',
  fees: 'rest',
  reprints: 'rest',
};

/** @returns what cost most beyond the standard, whole minor units above 0, the most first; price and use of one thing together */
export function largestLosses({
  bars,
}: Pick<RunResult, 'bars'>): readonly { readonly group: LossGroup; readonly minor: number }[] {
  const sums = new Map<LossGroup, number>();
  for (const { line, minor } of bars) sums.set(groupOf[line], (sums.get(groupOf[line]) ?? 0) - minor);
  return [...sums]
    .flatMap(([group, minor]) => (minor > 0 ? [{ group, minor }] : []))
    .toSorted((one, other) => other.minor - one.minor);
}
