import { asKept } from '@/lib/stored/asKept';
import type { Registry } from '@/lib/stored/registry';
import { sameValue } from '@/lib/stored/sameValue';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { ArrivalCounts, ArrivalPlan, DraftMeeting, Here, MeetingState } from './arrival';
import type { Copy } from './copy';
import { meetDraft } from './meetDraft';

/** Tells what would come of a copy, draft by draft, before anything is taken. */
export function planArrival(here: Here, copy: Copy, registry: Registry): ArrivalPlan {
  const isHere = (id: string) => here.drafts.has(id);
  const meetings = copy.drafts.map((theirs) =>
    meetDraft(
      {
        theirs,
        theirHashes: copy.hashes.get(theirs.id) ?? [],
        mine: here.drafts.get(theirs.id) ?? null,
        exchanged: here.exchanged.get(theirs.id) ?? null,
        isHere,
      },
      registry,
    ),
  );
  const met = new Set(meetings.map(({ id }) => id));
  const onlyHere = [...here.drafts.values()].filter(
    ({ id, deletedAt }) => deletedAt === undefined && !met.has(id),
  );
  const papers = union(here.papers, copy.papers);
  const entries = union(here.entries, copy.entries);
  const lettersTaken = lettersOf(copy, here);
  return {
    copy,
    here,
    meetings,
    onlyHere,
    newPapers: papers.fresh,
    newEntries: entries.fresh,
    otherContent: [...papers.other, ...entries.other],
    lettersTaken,
    letterTaken: here.device !== null && lettersTaken.includes(here.device.letter),
    counts: countsOf(copy, meetings, {
      newPapers: papers.fresh.length,
      newEntries: entries.fresh.length,
      onlyHere: onlyHere.length,
      entriesOnlyHere: union(copy.entries, here.entries).fresh.length,
    }),
  };
}

// Helpers

/** What was written once is the same wherever it is met, or one of the two is not what it says. */
function union<Item extends Paper | Entry>(
  here: readonly Item[],
  coming: readonly Item[],
): { readonly fresh: readonly Item[]; readonly other: readonly Item[] } {
  const known = new Map(here.map((item) => [item.id, item]));
  return {
    fresh: coming.filter(({ id }) => !known.has(id)),
    other: coming.filter((item) => {
      const here = known.get(item.id);
      return here !== undefined && !sameValue(asKept(here), asKept(item));
    }),
  };
}

/** Letters in which other devices number their papers. */
function lettersOf({ device, papers }: Copy, { device: own }: Here): readonly string[] {
  const bearers = [
    ...(device === null ? [] : [[device.id, device.letter] as const]),
    ...papers.map((paper) => [paper.device, paper.number.letter] as const),
  ];
  const letters = bearers.flatMap(([id, letter]) => (letter === null || id === own?.id ? [] : [letter]));
  return [...new Set(letters)].toSorted();
}

const noStates: Readonly<Record<MeetingState, number>> = {
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

function countsOf(
  copy: Copy,
  meetings: readonly DraftMeeting[],
  more: Pick<ArrivalCounts, 'newPapers' | 'newEntries' | 'onlyHere' | 'entriesOnlyHere'>,
): ArrivalCounts {
  const kinds: Record<string, number> = {};
  const states = { ...noStates };
  for (const { kind, state, theirs, mine } of meetings) {
    if (theirs.deletedAt === undefined) kinds[kind] = (kinds[kind] ?? 0) + 1;
    // What was removed there and never was here concerns nobody.
    if (theirs.deletedAt === undefined || (mine !== null && mine.deletedAt === undefined)) states[state] += 1;
  }
  return {
    kinds,
    files: copy.files.length,
    papers: copy.papers.length,
    entries: copy.entries.length,
    states,
    ...more,
  };
}
