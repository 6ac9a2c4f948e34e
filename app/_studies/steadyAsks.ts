import { sameValue } from '@/lib/merging/sameValue';
import type { StudyName } from './studies';
import type { StudyAsk } from './useStudies';

/**
 * The questions of now, each the same object as before where it asks the same of the same documents, so that
 * nothing is asked again because something else changed.
 */
export function steadyAsks<Name extends StudyName>(
  before: readonly StudyAsk<Name>[],
  now: readonly StudyAsk<Name>[],
): readonly StudyAsk<Name>[] {
  const known = new Map(before.map((ask) => [ask.key, ask]));
  const steady = now.map((ask) => {
    const old = known.get(ask.key);
    return old !== undefined && sameInput(old.input, ask.input) && sameValue(old.question, ask.question)
      ? old
      : ask;
  });
  return steady.length === before.length && steady.every((ask, index) => ask === before[index])
    ? before
    : steady;
}

/** Documents that did not change are the same objects, so no look inside is needed. */
const sameInput = (one: StudyAsk<StudyName>['input'], other: StudyAsk<StudyName>['input']): boolean =>
  one.asOf === other.asOf &&
  one.workshop === other.workshop &&
  one.blanks === other.blanks &&
  one.artworks === other.artworks &&
  one.job === other.job &&
  sameValue(one.onHand, other.onHand) &&
  sameValue(one.layouts, other.layouts) &&
  sameValue(one.approvedVersions, other.approvedVersions);
