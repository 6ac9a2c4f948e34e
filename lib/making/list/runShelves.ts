import type { RunFacts } from '@/lib/making/runFacts';

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
    compared(dueOf(one), dueOf(other)) || compared(one.run.name, other.run.name);
  const dueOf = (facts: RunFacts): string => wantedOn(facts) ?? facts.run.startsOn ?? NEVER;
  return {
    underWay: here.filter(({ isBegun, isClosed }) => isBegun && !isClosed).toSorted(byDay),
    open: here.filter(({ isBegun, isClosed }) => !isBegun && !isClosed).toSorted(byDay),
    done: here.filter(({ isClosed }) => isClosed).toSorted(latestFirst),
    putAway: runs.filter(({ run }) => run.archivedOn !== null).toSorted(latestFirst),
  };
}

// Helpers

/** After every day that can be written. */
const NEVER = '9999-99-99';

const latestFirst = (one: RunFacts, other: RunFacts): number => lastNoted(other) - lastNoted(one);

/** @returns when something was last noted of it, ms since 1970; 0 where nothing was. */
const lastNoted = ({ steps, standard }: RunFacts): number =>
  Math.max(standard?.at ?? 0, ...steps.map(({ at }) => at));

const compared = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);
