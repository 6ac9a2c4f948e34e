import { sameValue } from '@/lib/merging/sameValue';
import type { RateTaken } from '@/shared/schemas/making/learnedEvents';
import type { Rate } from '@/shared/schemas/rate';
import type { LearnedRun } from './learnedFrom';
import type { LearnedPlace } from './lesson';

/** What a place held before anything was taken over, and when a run began. */
interface HeldWhen {
  readonly first: number;
  readonly of: (run: Pick<LearnedRun, 'runId' | 'standard'>) => number;
}

/**
 * Runs begun after a figure was taken over were reckoned with it: held against what all of them began with, they would
 * count what they were taught as if nobody had seen it. What the maker set since holds for all, as it does for sums.
 *
 * @param taken in force, in order
 * @param now what the place holds
 * @param typical what is reckoned with where it holds nothing
 */
export function heldWhen(
  taken: readonly RateTaken[],
  { kind, id, path }: Pick<LearnedPlace, 'kind' | 'id' | 'path'>,
  now: Rate | null,
  typical: number,
): HeldWhen {
  const steps = taken.flatMap(({ day, runIds, places }) => {
    const place = places.find((one) => one.kind === kind && one.id === id && sameValue(one.path, path));
    const after = figureOf(place?.after);
    return after === null ? [] : [{ day, runIds, before: figureOf(place?.before) ?? typical, after }];
  });
  const first = steps[0]?.before;
  const held = now?.value ?? typical;
  if (first === undefined || steps.at(-1)?.after !== held) return { first: held, of: () => held };
  return {
    first,
    of: ({ runId, standard }) =>
      steps.findLast(({ day, runIds }) => day <= standard.issuedOn && !runIds.includes(runId))?.after ??
      first,
  };
}

// Helpers

const figureOf = (held: LearnedPlace['before'] | undefined): number | null =>
  typeof held === 'object' && held !== null && 'value' in held ? held.value : null;
