import type { RunFacts } from '@/lib/making/runFacts';
import { compareText } from '@/shared/compareText';
import type { RunStandard } from '@/shared/schemas/making/runPapers';

/** A run that was begun by a standard. */
interface BegunRun {
  readonly runId: string;
  readonly standard: RunStandard;
  readonly facts: RunFacts;
}

/**
 * The runs that teach: those with a standard, the first begun first, for its standard is the one that all later ones
 * are measured against. Documents stand in no order of time, so that each device would take another one for the first.
 */
export const runsToLearnFrom = (runs: readonly RunFacts[]): readonly BegunRun[] =>
  runs
    .flatMap((facts) => (facts.standard === null ? [] : [{ facts, begun: facts.standard }]))
    .toSorted(
      (one, other) => one.begun.at - other.begun.at || compareText(one.facts.runId, other.facts.runId),
    )
    .map(({ facts, begun }) => ({ runId: facts.runId, standard: begun.body, facts }));
