import type { Loss } from '@/app/_words/store/lossWords';
import { arrangeArrival } from '@/lib/copies/arrangeArrival';
import type { ArrivalPlan } from '@/lib/copies/arrival';
import { entryCounts, uncountedBy } from '@/lib/copies/entryCounts';
import { type Holdings, holdingsOf } from '@/lib/copies/holdings';
import { namedFiles } from '@/lib/copies/namedFiles';
import { kinds } from '@/lib/kinds/kinds';
import { claimedName } from '@/lib/stored/claimedName';
import { holdingsOfPlan } from './holdingsOfPlan';

/** What a preview tells beside what becomes of each draft. */
interface ArrivalFacts {
  /** What is here, counted as a copy of it would be. */
  readonly here: Holdings;
  readonly inCopy: Holdings;
  /** When anything here was changed last; null where there is nothing. */
  readonly hereChangedAt: number | null;
  readonly isSameDevice: boolean;
}

/** @returns what is here today, and what is in the copy. */
export function arrivalFacts(plan: ArrivalPlan): ArrivalFacts {
  const { here, copy } = plan;
  const { papers, entries } = here;
  const drafts = [...here.drafts.values()];
  const live = drafts.filter(({ deletedAt }) => deletedAt === undefined);
  const files = namedFiles([...drafts, ...papers, ...entries]).filter(({ sha256 }) => here.files.has(sha256));
  return {
    here: holdingsOf({ drafts, papers, entries, files }),
    inCopy: holdingsOfPlan(plan),
    hereChangedAt: live.length === 0 ? null : Math.max(...live.map(({ updatedAt }) => updatedAt)),
    isSameDevice: copy.device !== null && copy.device.id === here.device?.id,
  };
}

/** @returns the loss if the copy took the place of everything, by the sums that the store itself goes by. */
export function arrivalLoss(plan: ArrivalPlan): Loss {
  const { goes, goesBack, entries } = arrangeArrival(plan, { mode: 'replace' }, kinds);
  return {
    goes: goes.map((draft) => ({ kind: draft.kind, name: claimedName(draft) })),
    goesBack,
    uncounted: entryCounts(uncountedBy(plan.here.entries, entries), plan.here.papers),
  };
}
