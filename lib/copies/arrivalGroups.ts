import { claimedName } from '@/lib/stored/claimedName';
import type { ArrivalPlan, Choice, DraftMeeting } from './arrival';

/** What becomes of a draft, as the preview tells it; in the order in which it does. */
const arrivalFates = [
  'comesBack',
  'new',
  'updated',
  'merged',
  'beside',
  'replaced',
  'setBack',
  'removed',
  'newerHere',
  'onlyHere',
  'keptMine',
  'removedThere',
  'doubled',
  'leftOut',
  'same',
] as const;
export type ArrivalFate = (typeof arrivalFates)[number];

/** Fates in which something here changes. */
const changing: readonly ArrivalFate[] = [
  'comesBack',
  'new',
  'updated',
  'merged',
  'beside',
  'replaced',
  'setBack',
  'removed',
];

/** Fates in which what is here now makes way. */
export const losing: readonly ArrivalFate[] = ['replaced', 'setBack', 'removed'];

export interface FatedDraft {
  readonly id: string;
  readonly kind: string;
  readonly name: string | null;
  /** When it was removed here; null where it was not. */
  readonly removedAt: number | null;
}

export interface ArrivalGroup {
  readonly fate: ArrivalFate;
  readonly isChange: boolean;
  readonly drafts: readonly FatedDraft[];
}

/** What the maker chose, by id of the draft. */
export type Choices = Readonly<Record<string, Choice>>;

/** @returns what is chosen for a draft: what the maker said, else what happens unasked. */
export const choiceOf = ({ id, choices: [first] }: DraftMeeting, chosen: Choices): Choice =>
  chosen[id] ?? first;

/** @returns the drafts by what becomes of them; a fate that none has is not there. */
export function arrivalGroups(
  { meetings, onlyHere }: Pick<ArrivalPlan, 'meetings' | 'onlyHere'>,
  chosen: Choices,
): readonly ArrivalGroup[] {
  const fated = [
    ...meetings.map((meeting) => ({
      fate: fateOf(meeting, choiceOf(meeting, chosen)),
      draft: {
        id: meeting.id,
        kind: meeting.kind,
        name: meeting.name,
        removedAt: meeting.mine?.deletedAt ?? null,
      },
    })),
    ...onlyHere.map((draft) => ({
      fate: 'onlyHere' as const,
      draft: { id: draft.id, kind: draft.kind, name: claimedName(draft), removedAt: null },
    })),
  ];
  return arrivalFates.flatMap((fate) => {
    const drafts = fated.flatMap((one) => (one.fate === fate ? [one.draft] : []));
    return drafts.length === 0 ? [] : [{ fate, isChange: changing.includes(fate), drafts }];
  });
}

// Helpers

function fateOf({ state }: DraftMeeting, choice: Choice): ArrivalFate {
  if (state === 'same') return 'same';
  if (choice === 'both') return state === 'doubled' ? 'doubled' : 'beside';
  if (choice === 'mine') return stays[state] ?? 'keptMine';
  return comes[state] ?? 'replaced';
}

type Fates = Readonly<Partial<Record<DraftMeeting['state'], ArrivalFate>>>;

const stays: Fates = {
  newerHere: 'newerHere',
  removedThere: 'removedThere',
  doubled: 'doubled',
  new: 'leftOut',
  comesBack: 'leftOut',
};
const comes: Fates = {
  new: 'new',
  comesBack: 'comesBack',
  newerThere: 'updated',
  merged: 'merged',
  newerHere: 'setBack',
  removedThere: 'removed',
};
