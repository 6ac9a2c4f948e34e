import type { RunJob } from '@/lib/making/runPlan';
import { blanksOfJob } from '@/lib/making/standard/blanksOfJob';
import type { RunQuestion } from '@/lib/making/study/runQuestion';
import type { Cover } from '@/shared/schemas/making/supply';
import type { JobInput } from '@/shared/schemas/request';
import { freeAtHome } from './freeAtHome';

/** A size of a blank that a run takes. */
interface BlankAtHome {
  readonly blankId: string;
  readonly blankName: string;
  readonly size: string;
  readonly take: number;
  /** Beyond what is kept for other work; null where nobody counted. */
  readonly home: number | null;
  /** 0 where enough are at home; all of them where nobody counted. */
  readonly short: number;
  /** The customer brings them. */
  readonly isBrought: boolean;
}

/** @returns blanks a run takes beside what lies at home, in the order of its jobs. */
export function blanksAtHome(
  jobs: readonly RunJob[],
  cover: Cover,
  onHand: JobInput['onHand'],
  kept: RunQuestion['kept'],
): readonly BlankAtHome[] {
  const rows = new Map<string, BlankAtHome>();
  for (const job of jobs) {
    for (const { lineId, size, take } of blanksOfJob(job, cover)) {
      const line = job.input.job.lines.find(({ id }) => id === lineId);
      const blank = line === undefined ? undefined : job.input.blanks[line.blankId];
      if (line === undefined || blank === undefined) continue;
      const key = JSON.stringify([line.blankId, size]);
      const all = take + (rows.get(key)?.take ?? 0);
      const home = freeAtHome({ onHand }, { blankId: line.blankId, size }, kept);
      rows.set(key, {
        ...{ blankId: line.blankId, blankName: blank.name, size, take: all, home },
        short: Math.max(0, all - (home ?? 0)),
        isBrought: blank.suppliedBy === 'customer',
      });
    }
  }
  return [...rows.values()];
}
