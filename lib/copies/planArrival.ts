import { isErasedForm } from '@/lib/erasing/erasedEntry';
import { isPlainObject, sameValue } from '@/lib/merging/sameValue';
import { asKept } from '@/lib/stored/asKept';
import { takenBackAmong } from '@/lib/stored/entriesInForce';
import type { Registry } from '@/lib/stored/registry';
import { takenBy } from '@/lib/stored/takeBack';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { ArrivalCounts, ArrivalPlan, DraftMeeting, Here, MeetingState } from './arrival';
import { comingEntries } from './comingEntries';
import type { Copy } from './copy';
import { entryCounts, newsAmong, uncountedBy } from './entryCounts';
import { meetDraft } from './meetDraft';
import { namedFiles } from './namedFiles';

/**
 * Tells what would come of a copy, draft by draft, before anything is taken.
 *
 * @param pause taken after each draft, so that whoever shares the thread gets a turn
 */
export async function planArrival(
  here: Here,
  copy: Copy,
  { registry, pause }: { readonly registry: Registry; readonly pause: () => Promise<void> },
): Promise<ArrivalPlan> {
  const isHere = (id: string) => here.drafts.has(id);
  const meetings: DraftMeeting[] = [];
  for (const theirs of copy.drafts) {
    const theirHashes = copy.hashes.get(theirs.id) ?? [];
    const mine = here.drafts.get(theirs.id) ?? null;
    const exchanged = here.exchanged.get(theirs.id) ?? null;
    meetings.push(meetDraft({ theirs, theirHashes, mine, exchanged, isHere }, registry));
    await pause();
  }
  const met = new Set(meetings.map(({ id }) => id));
  const onlyHere = [...here.drafts.values()].filter(
    ({ id, deletedAt }) => deletedAt === undefined && !met.has(id),
  );
  const papers = union(here.papers, copy.papers);
  const unasked = meetings.map((meeting) => ({ meeting, choice: meeting.choices[0] }));
  const entries = union(here.entries, comingEntries(copy, unasked, 'beside'));
  const lettersTaken = lettersOf(copy, here);
  const filesBack = filesBackOf(copy, here);
  return {
    copy,
    here,
    meetings,
    onlyHere,
    newPapers: papers.fresh,
    filesBack,
    otherContent: [...papers.other, ...entries.other],
    lettersTaken,
    letterTaken: here.device !== null && lettersTaken.includes(here.device.letter),
    counts: countsOf(copy, meetings, {
      ...countingAfter(here, { entries: entries.fresh, papers: papers.fresh }),
      onlyHere: onlyHere.length,
      filesBack: filesBack.length,
      unread: copy.unreadable.filter(({ raw }) => !here.unreadable.some((known) => sameValue(known.raw, raw)))
        .length,
      entriesOnlyHere: entryCounts(
        uncountedBy(here.entries, comingEntries(copy, [], 'replace')),
        here.papers,
      ),
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
      return (
        here !== undefined &&
        !sameValue(asKept(here), asKept(item)) &&
        !isErasedForm(asKept(here), asKept(item))
      );
    }),
  };
}

/** What comes may take back what is here: a sum of the preview, by the rule that screens go by. */
function countingAfter(
  { entries: here, papers: known }: Pick<Here, 'entries' | 'papers'>,
  { entries: fresh, papers }: { readonly entries: readonly Entry[]; readonly papers: readonly Paper[] },
): Pick<ArrivalCounts, 'newPapers' | 'newEntries' | 'noLongerCounting' | 'countingAgain'> {
  const before = takenBackAmong(here);
  const after = takenBackAmong([...here, ...fresh]);
  const counting = fresh.filter((entry) => takenBy(entry) === null && !after.has(entry.id));
  // The entry that issues a paper is told by the paper alone.
  const issued = counting.flatMap(({ kind, body }) =>
    kind === 'issuing' && isPlainObject(body) ? [String(body.paperId)] : [],
  );
  const others = counting.filter(({ kind }) => kind !== 'issuing');
  const own = here.filter((entry) => takenBy(entry) === null);
  const all = [...known, ...papers];
  const coming = [...new Set([...papers.map(({ id }) => id), ...issued])].map((paperId) => ({
    kind: 'issuing',
    body: { paperId },
  }));
  const { issuing: newPapers = 0, ...keptPapers } = entryCounts(coming, all);
  return {
    newPapers,
    newEntries: { ...keptPapers, ...entryCounts(newsAmong(others, here)) },
    noLongerCounting: entryCounts(
      own.filter(({ id }) => !before.has(id) && after.has(id)),
      all,
    ),
    countingAgain: entryCounts(
      own.filter(({ id }) => before.has(id) && !after.has(id)),
      all,
    ),
  };
}

/** Where the browser lost a file, a copy gives it back, whatever became of the draft that names it. */
function filesBackOf({ files }: Copy, here: Here): readonly string[] {
  const lacking = files.filter(({ sha256 }) => !here.files.has(sha256));
  if (lacking.length === 0) return [];
  const holders = [...here.drafts.values(), ...here.papers, ...here.entries];
  const named = new Set(namedFiles(holders).map(({ sha256 }) => sha256));
  return lacking.flatMap(({ sha256 }) => (named.has(sha256) ? [sha256] : []));
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
  more: Omit<ArrivalCounts, 'kinds' | 'files' | 'papers' | 'entries' | 'states'>,
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
    entries: comingEntries(copy, [], 'replace').length,
    states,
    ...more,
  };
}
