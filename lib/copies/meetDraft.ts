import { mergeValues } from '@/lib/merging/mergeValues';
import { sameValue } from '@/lib/merging/sameValue';
import { claimedName } from '@/lib/stored/claimedName';
import { type Snapshot, snapshotOf } from '@/lib/stored/documentChange';
import { bodyFits, entryOf, type Registry } from '@/lib/stored/registry';
import type { Stored } from '@/shared/schemas/stored';
import type { Choice, DraftMeeting, MeetingState } from './arrival';
import { idOfDouble } from './doubles';
import { type Exchanged, hashOfDraft } from './exchanged';
import { lineageOf } from './lineage';

interface Arriving {
  readonly theirs: Stored;
  readonly theirHashes: readonly string[];
  readonly mine: Stored | null;
  readonly exchanged: Exchanged | null;
  /** Whether a draft is here under an id, removed or not. */
  readonly isHere: (id: string) => boolean;
}

/** Holds one arriving draft against the one here. */
export function meetDraft(arriving: Arriving, registry: Registry): DraftMeeting {
  const { mine, theirs } = arriving;
  const outcome = outcomeOf(arriving, registry);
  return {
    id: theirs.id,
    kind: theirs.kind,
    name: claimedName(theirs),
    mine,
    theirs,
    merged: null,
    clashes: [],
    ...outcome,
    choices: choicesOf(outcome.state, entryOf(registry, theirs.kind)?.needed === theirs.id),
  };
}

// Helpers

type Outcome = Pick<DraftMeeting, 'state'> & Partial<Pick<DraftMeeting, 'merged' | 'clashes'>>;

function outcomeOf({ mine, theirs, theirHashes, exchanged, isHere }: Arriving, registry: Registry): Outcome {
  if (mine === null) return { state: 'new' };
  const isDoubled = () => isHere(idOfDouble(theirs));
  if (mine.kind !== theirs.kind) return { state: isDoubled() ? 'doubled' : 'clash' };
  const gone = [mine.deletedAt !== undefined, theirs.deletedAt !== undefined] as const;
  if (gone[0] !== gone[1]) return { state: gone[0] ? 'comesBack' : 'removedThere' };
  if (gone[0] || sameValue(mine.body, theirs.body)) return { state: 'same' };
  if (hashOfDraft(snapshotOf(mine)) === hashOfDraft(snapshotOf(theirs))) return { state: 'same' };
  // Kept beside it already, as a draft of its own.
  if (isDoubled()) return { state: 'doubled' };
  const lineage = lineageOf({ mine, theirs, exchanged, theirHashes }, registry);
  const isLater = theirs.updatedAt > mine.updatedAt;
  if (lineage.mineIsOlder && lineage.theirsIsOlder) return { state: isLater ? 'newerThere' : 'newerHere' };
  if (lineage.mineIsOlder) return { state: 'newerThere' };
  if (lineage.theirsIsOlder) return { state: 'newerHere' };
  if (!lineage.isKnown) {
    const mineIsUntouched = isUntouched(mine, exchanged?.hashes ?? []);
    const theirsIsUntouched = isUntouched(theirs, theirHashes);
    if (mineIsUntouched && (!theirsIsUntouched || isLater)) return { state: 'newerThere' };
    if (theirsIsUntouched) return { state: 'newerHere' };
  }
  if (!lineage.isKnown && !isLater) return { state: 'newerHere' };
  if (lineage.base === null) return { state: 'clash' };
  const { value, conflicts } = mergeValues(lineage.base.body, mine.body, theirs.body);
  if (conflicts.length > 0 || !bodyFits(registry, mine.kind, value))
    return { state: 'clash', clashes: conflicts };
  // Both did the same, or one only what the other did as well.
  if (sameValue(value, mine.body)) return { state: 'newerHere' };
  if (sameValue(value, theirs.body)) return { state: 'newerThere' };
  return { state: 'merged', merged: { ...snapshotOf(mine), body: value } satisfies Snapshot };
}

/**
 * Whether a draft is as the first visit put it there, and so what every other of its id was made from, whatever the
 * clocks say: what is the maker's own has an id drawn at random, and what was edited or came in has a later revision.
 */
const isUntouched = (draft: Stored, hashes: readonly string[]): boolean =>
  draft.revision === 1 &&
  !DRAWN_AT_RANDOM.test(draft.id) &&
  hashes.every((hash) => hash === hashOfDraft(snapshotOf(draft)));

const DRAWN_AT_RANDOM = /^[0-9a-f]{24,}$/;

const choices: Readonly<Record<MeetingState, readonly [Choice, ...Choice[]]>> = {
  same: ['mine'],
  new: ['theirs', 'mine'],
  comesBack: ['theirs', 'mine'],
  removedThere: ['mine', 'theirs'],
  newerThere: ['theirs', 'mine', 'both'],
  newerHere: ['mine', 'theirs', 'both'],
  merged: ['theirs', 'mine', 'both'],
  clash: ['both', 'mine', 'theirs'],
  doubled: ['mine', 'theirs'],
};

/** What all others stand on there is once: of two that clash, mine stays. */
function choicesOf(state: MeetingState, isNeeded: boolean): DraftMeeting['choices'] {
  const offered = choices[state];
  if (!isNeeded) return offered;
  if (state === 'removedThere') return ['mine'];
  const [first = 'mine', ...more] = offered.filter((choice) => choice !== 'both');
  return [first, ...more];
}
