import type { ArrivalPlan, DraftMeeting, MeetingState } from '@/lib/copies/arrival';
import type { CopyLacks, CopyScope } from '@/lib/copies/copy';
import type { EntryCounts } from '@/lib/copies/entryCounts';
import type { Stored } from '@/shared/schemas/stored';

/** 14 and 19 November 2026 at noon, in the zone of whoever looks. */
const NOV_14 = new Date(2026, 10, 14, 20, 10).getTime();
const NOV_19 = new Date(2026, 10, 19, 12, 0).getTime();
const NOV_26 = new Date(2026, 10, 26, 13, 55).getTime();

export const aDraft = (
  id: string,
  name: string,
  change: Partial<Stored> & { readonly body?: unknown } = {},
): Stored => ({
  id,
  kind: 'job',
  version: 4,
  revision: 2,
  updatedAt: NOV_26,
  ...change,
  body: { name, ...(typeof change.body === 'object' ? change.body : {}) },
});

/** A job that is in the copy and stands so to the one here. */
export function aMeeting(
  state: MeetingState,
  name: string,
  change: Partial<DraftMeeting> = {},
): DraftMeeting {
  const id = name.toLowerCase().replaceAll(' ', '-');
  const theirs = aDraft(id, name);
  const mine =
    state === 'new'
      ? null
      : state === 'comesBack'
        ? aDraft(id, name, { deletedAt: NOV_19 })
        : aDraft(id, name);
  return {
    id,
    kind: 'job',
    name,
    state,
    mine,
    theirs,
    merged: null,
    clashes: [],
    choices: usual[state],
    ...change,
  };
}

const usual: Readonly<Record<MeetingState, DraftMeeting['choices']>> = {
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

const whole: CopyLacks = { endsEarly: false, records: { found: 60, of: 60 }, files: [], refused: [] };

interface PlanParts {
  readonly meetings: readonly DraftMeeting[];
  readonly onlyHere?: readonly Stored[];
  readonly lacks?: Partial<CopyLacks>;
  readonly of?: CopyScope;
  readonly papers?: number;
  readonly newPapers?: number;
  readonly newEntries?: EntryCounts;
  readonly noLongerCounting?: EntryCounts;
  readonly entriesOnlyHere?: EntryCounts;
  readonly filesBack?: number;
  readonly unread?: number;
}

/** What would come of a copy of 14 November, made on device K, looked at on device M. */
export function aPlan(parts: PlanParts): ArrivalPlan {
  const { meetings, onlyHere = [], lacks, of = 'everything' } = parts;
  const mine = meetings.flatMap((meeting) => (meeting.mine === null ? [] : [meeting.mine]));
  const kinds: Record<string, number> = {};
  const states: Record<MeetingState, number> = {
    same: 0,
    new: 0,
    comesBack: 0,
    removedThere: 0,
    newerThere: 0,
    newerHere: 0,
    merged: 0,
    clash: 0,
    doubled: 0,
  };
  for (const { kind, state } of meetings) {
    kinds[kind] = (kinds[kind] ?? 0) + 1;
    states[state] += 1;
  }
  return {
    copy: {
      formatVersion: 2,
      of,
      madeAt: NOV_14,
      device: { id: 'deviceofk', letter: 'K' },
      madeOn: 'the laptop',
      drafts: meetings.map(({ theirs }) => theirs),
      hashes: new Map(),
      papers: [],
      entries: [],
      leftByDrafts: new Map(),
      unreadable: [],
      files: [],
      lacks: { ...whole, ...lacks },
    },
    here: {
      drafts: new Map([...mine, ...onlyHere].map((draft) => [draft.id, draft])),
      papers: [],
      entries: [],
      unreadable: [],
      exchanged: new Map(),
      device: { id: 'deviceofm', letter: 'M' },
      files: new Set(),
    },
    meetings,
    onlyHere,
    counts: {
      kinds,
      files: 0,
      papers: parts.papers ?? 0,
      entries: 0,
      newPapers: parts.newPapers ?? 0,
      newEntries: parts.newEntries ?? {},
      noLongerCounting: parts.noLongerCounting ?? {},
      countingAgain: {},
      states,
      onlyHere: onlyHere.length,
      filesBack: parts.filesBack ?? 0,
      unread: parts.unread ?? 0,
      entriesOnlyHere: parts.entriesOnlyHere ?? {},
    },
    otherContent: [],
    newPapers: [],
    filesBack: [],
    lettersTaken: [],
    letterTaken: false,
  };
}
