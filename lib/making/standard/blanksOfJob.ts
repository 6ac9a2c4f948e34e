import { blanksTaken, casesToCover } from '@/lib/grid/blanksTaken';
import type { RunJob } from '@/lib/making/runPlan';
import type { Cover } from '@/shared/schemas/making/supply';

/** A size of a line with the blanks laid out for it. */
interface SizeBlanks {
  readonly lineId: string;
  readonly size: string;
  /** Good pieces. */
  readonly wanted: number;
  /** Blanks laid out, spares among them. */
  readonly take: number;
  /** That a blank ends good. */
  readonly chance: number;
}

/**
 * Blanks of each size of a job by the cover of its run. Those that a customer brings cannot be bought again: of them
 * every run takes as many as the customer was asked for.
 */
export function blanksOfJob({ input, costed: { sheet } }: RunJob, cover: Cover): readonly SizeBlanks[] {
  const blankOf = (lineId: string) => {
    const line = input.job.lines.find(({ id }) => id === lineId);
    if (line === undefined) return null;
    return input.blanks[line.blankId]?.suppliedBy === 'customer' ? null : line.blankId;
  };
  const { take } = blanksTaken(sheet, blankOf, cover);
  return casesToCover(sheet).map(({ lineId, size, pieces, chance }, at) => ({
    ...{ lineId, size, chance },
    wanted: pieces,
    take: take[at] ?? pieces,
  }));
}
