import type { RunJob } from '@/lib/making/runPlan';
import { blanksOfRun } from '@/lib/making/standard/blanksOfRun';
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
  /** 0 where enough are at home; all of them where nobody counted, or more went out than was in. */
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
  for (const { blankId, blankName, size, take, isBrought } of blanksOfRun(jobs, cover)) {
    const key = JSON.stringify([blankId, size]);
    const all = take + (rows.get(key)?.take ?? 0);
    const home = freeAtHome({ onHand }, { blankId, size }, kept);
    rows.set(key, {
      ...{ blankId, blankName, size, take: all, home, isBrought },
      // Less than none counts as none, as on a buying list: it was never counted in.
      short: Math.max(0, all - Math.max(0, home ?? 0)),
    });
  }
  return [...rows.values()];
}
