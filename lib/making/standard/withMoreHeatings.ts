import { moreHeatings, oneHeating } from '@/lib/making/clock/moreHeatings';
import type { RunJob } from '@/lib/making/runPlan';
import type { StandardWork } from '@/shared/schemas/making/runPapers';

/** @returns works of a run, that whose session takes most with so many heatings-up more; the same that is told before */
export function withMoreHeatings(
  works: readonly StandardWork[],
  jobs: readonly RunJob[],
  heatings: number,
): StandardWork[] {
  const costs = jobs.map(({ costed }) => moreHeatings([costed], heatings).cost);
  const at = costs.indexOf(Math.max(...costs));
  const job = jobs[at];
  return works.map((work, index) => (index === at && job !== undefined ? heated(work, job, heatings) : work));
}

// Helpers

function heated(work: StandardWork, { costed }: RunJob, heatings: number): StandardWork {
  const one = oneHeating(costed);
  const setUp = costed.sheet.inputs.job.setUpMinutes?.value ?? 0;
  const both = setUp + (costed.sheet.inputs.job.cleanDownMinutes?.value ?? 0);
  const share = (element: string): number =>
    both === 0 ? 0 : element === 'setUp' ? setUp / both : element === 'cleanDown' ? 1 - setUp / both : 0;
  const minutes = heatings * one.minutes;
  return {
    ...work,
    ink: {
      ...work.ink,
      mL: work.ink.mL + heatings * one.inkMl,
      sessionMl: work.ink.sessionMl + heatings * one.inkMl,
    },
    labour: {
      ...work.labour,
      minutes: work.labour.minutes + minutes,
      elements: work.labour.elements.map((part) => ({
        ...part,
        minutes: part.minutes + minutes * share(part.element),
      })),
    },
    reprints: work.reprints + heatings * one.reprints,
    otherCost: work.otherCost + heatings * one.power,
    fullCost: work.fullCost + moreHeatings([costed], heatings).cost,
  };
}
