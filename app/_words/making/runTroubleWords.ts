import type { Formatter } from '@/app/_words/formatter';
import { minutesWords } from '@/app/_words/minutesWords';
import type { RunTrouble } from '@/lib/making/runPlan';

/** @returns why a run cannot be planned: what is wrong, what it causes, how to mend it */
export function runTroubleWords(trouble: RunTrouble, formatter: Formatter, locale: string): string {
  const min = (minutes: number) => minutesWords(minutes, locale);
  switch (trouble.kind) {
    case 'noWorks':
      return 'No job is in this run, so there is nothing to make. Add one.';
    case 'jobMissing':
      return `The job ${trouble.jobId} is not here, so nobody knows what it takes. Bring it back, or take it out of the run.`;
    case 'jobTwice':
      return `The job ${trouble.jobId} is in this run twice, so its pieces would be made twice. Take one out.`;
    case 'jobStopped':
      return `${trouble.name} has a stop, so what it takes is not known. Mend it in the job.`;
    case 'noPieces':
      return `${trouble.name} has no pieces to make. Say how many in the job, or take it out of the run.`;
    case 'noBlocks':
      return 'Nobody has said when the bench is free, so no part of the run has a time. Say it in the workshop, or give the run its own times.';
    case 'noBlock':
      return `No time at the bench is long enough to heat up the press for even one piece: that takes ${min(trouble.neededMinutes)}, and the longest is ${min(trouble.longestMinutes)}. Give the run a longer time.`;
    case 'moreHeatings':
      return `All pieces take ${min(trouble.neededMinutes)} with one heating-up${trouble.accepted === 1 ? '' : `, the longest of ${formatter.number(trouble.accepted, 0)} takes ${min(trouble.acceptedMinutes)}`}, and the longest time at the bench is ${min(trouble.longestMinutes)}. Accept ${formatter.count(trouble.needed, 'heating-up', 'heatings-up')}, which costs ${formatter.money(trouble.more.cost)} and ${min(trouble.more.minutes)} more, or give the run a longer time.`;
    case 'blockEmpty':
      return `The time of ${formatter.day(trouble.day)} ends when it begins, so nobody knows whether it holds anything. Say when it ends.`;
    case 'blocksOverlap':
      return `The time of ${formatter.day(trouble.day)} overlaps that of ${formatter.day(trouble.other)}, and what they share counts once. Move one of them.`;
    case 'blocksEnd':
      return trouble.isOwn
        ? 'The times of this run end before its work does, so part of it would be left. Give it more.'
        : 'The times of the week do not hold this run within two years. Say more of them in the workshop.';
    default:
      return trouble satisfies never;
  }
}
