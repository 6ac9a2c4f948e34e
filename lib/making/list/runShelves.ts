import type { RunFacts } from '@/lib/making/runFacts';
import { compareText } from '@/shared/compareText';
import { compareDays } from '@/shared/days';

/** Runs as they are listed. */
interface RunShelves {
  /** Begun and not closed. */
  readonly underWay: readonly RunFacts[];
  /** Not begun, the one that is wanted first at the head. */
  readonly open: readonly RunFacts[];
  /** Closed, the latest first. */
  readonly done: readonly RunFacts[];
  readonly putAway: readonly RunFacts[];
}

/**
 * @param wantedOn the first day on which something of a run is wanted, YYYY-MM-DD; null where nobody waits
 */
export function runShelves(
  runs: readonly RunFacts[],
  wantedOn: (facts: RunFacts) => string | null,
): RunShelves {
  const here = runs.filter(({ run }) => run.archivedOn === null);
  const byDay = (one: RunFacts, other: RunFacts): number =>
    compareDays(dueOf(one), dueOf(other)) ||
    compareText(one.run.name, other.run.name) ||
    compareText(one.runId, other.runId);
  const dueOf = (facts: RunFacts): string | null => wantedOn(facts) ?? facts.run.startsOn;
  return {
    underWay: here.filter(({ isBegun, isClosed }) => isBegun && !isClosed).toSorted(byDay),
    open: here.filter(({ isBegun, isClosed }) => !isBegun && !isClosed).toSorted(byDay),
    done: here.filter(({ isClosed }) => isClosed).toSorted(latestFirst),
    putAway: runs.filter(({ run }) => run.archivedOn !== null).toSorted(latestFirst),
  };
}

// Helpers

const latestFirst = (one: RunFacts, other: RunFacts): number =>
  lastNoted(other) - lastNoted(one) || compareText(one.runId, other.runId);

/** @returns when something was last noted of it, ms since 1970; 0 where nothing was. */
const lastNoted = ({ steps, standard }: RunFacts): number =>
  Math.max(standard?.at ?? 0, ...steps.map(({ at }) => at));
