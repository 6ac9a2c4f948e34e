import type { FieldPath } from '@/lib/merging/mergeValues';
import type { Snapshot } from '@/lib/stored/documentChange';
import type { UnreadableRecord } from '@/lib/stored/openRecord';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { Stored } from '@/shared/schemas/stored';
import type { Copy, CopyDevice, CopyFile } from './copy';
import type { EntryCounts } from './entryCounts';
import type { Exchanged } from './exchanged';

/** What is on this device when something arrives. */
export interface Here {
  /** As the maker sees them, tombstones included. */
  readonly drafts: ReadonlyMap<string, Stored>;
  readonly papers: readonly Paper[];
  /** Without those that are out of force on this device alone: if they come, they come in. */
  readonly entries: readonly Entry[];
  readonly unreadable: readonly UnreadableRecord[];
  readonly exchanged: ReadonlyMap<string, Exchanged>;
  readonly device: CopyDevice | null;
  /** Hashes of the files that are here. */
  readonly files: ReadonlySet<string>;
}

/**
 * How an arriving draft stands to the one here. `comesBack`: it was removed here. `removedThere`: it was removed
 * where the copy was made, and stays here. `newerThere`: what is here is what they started from; `newerHere` the
 * other way round. `merged`: both changed, in different places. `clash`: both changed the same, or nobody can tell.
 * `doubled`: it clashed earlier, and theirs lies beside as a draft of its own.
 */
export type MeetingState =
  | 'same'
  | 'new'
  | 'comesBack'
  | 'removedThere'
  | 'newerThere'
  | 'newerHere'
  | 'merged'
  | 'clash'
  | 'doubled';

/** `theirs` of what was `merged` is both changes together, unless the copy takes the place of everything. `both`: mine stays, and theirs comes beside it under an id and a name of its own. */
export type Choice = 'mine' | 'theirs' | 'both';

export interface DraftMeeting {
  readonly id: string;
  readonly kind: string;
  /** What it is called; null where it has no name of its own. */
  readonly name: string | null;
  readonly state: MeetingState;
  readonly mine: Stored | null;
  readonly theirs: Stored;
  /** Of both, where the state is `merged`. */
  readonly merged: Snapshot | null;
  /** Where both changed the same; empty where that cannot be made out. */
  readonly clashes: readonly FieldPath[];
  /** What can be chosen, what happens unless another is chosen first. */
  readonly choices: readonly [Choice, ...Choice[]];
}

/** What would come of a copy; made once, then arranged by what the maker chooses. */
export interface ArrivalPlan {
  readonly copy: Copy;
  readonly here: Here;
  readonly meetings: readonly DraftMeeting[];
  /** Live drafts here of which the copy holds none. */
  readonly onlyHere: readonly Stored[];
  readonly counts: ArrivalCounts;
  /** Papers and entries whose id says something else here; what is here stays, and theirs is set aside. */
  readonly otherContent: readonly (Paper | Entry)[];
  readonly newPapers: readonly Paper[];
  /** Hashes of files that something here names, that are not here any more and lie in the copy. */
  readonly filesBack: readonly string[];
  /** Letters of other devices, which this one must not number papers with. */
  readonly lettersTaken: readonly string[];
  /** Another device bears the letter of this one. */
  readonly letterTaken: boolean;
}

export interface ArrivalCounts {
  /** Live drafts in the copy by kind; a kind with none is not there. */
  readonly kinds: Readonly<Record<string, number>>;
  readonly files: number;
  readonly papers: number;
  readonly entries: number;
  /** Papers that went out and would come in, or lie here and would be in force again; others are among `newEntries`. */
  readonly newPapers: number;
  /** Other entries that would come in, count and say something new. */
  readonly newEntries: EntryCounts;
  /** Entries here that would no longer count beside what comes: where the copy was made they were taken back. */
  readonly noLongerCounting: EntryCounts;
  /** Entries here, taken back, that would count again beside what comes. */
  readonly countingAgain: EntryCounts;
  readonly states: Readonly<Record<MeetingState, number>>;
  readonly onlyHere: number;
  /** Files that something here names and that would be here again. */
  readonly filesBack: number;
  /** Records that nothing here can read and that are not kept here yet. */
  readonly unread: number;
  /** Entries that count here and that the copy lacks; when it takes the place of everything they count no more. */
  readonly entriesOnlyHere: EntryCounts;
}

/**
 * `beside`: everything here stays. `replace`: drafts that are here and not in the copy are removed, and entries that are
 * not in it count no more; both can be undone.
 */
export interface ArrivalChoice {
  readonly mode: 'beside' | 'replace';
  /** By id of the draft; what is not named goes by the first of its choices. */
  readonly choices?: Readonly<Record<string, Choice>>;
}

/** Exactly what the store writes, all of it in one step or none. */
export interface Arrival {
  readonly drafts: readonly {
    readonly id: string;
    readonly kind: string;
    readonly snapshot: Snapshot;
  }[];
  /** Every paper and entry of the copy, those that are here already too: what counts is told by all of them. */
  readonly papers: readonly Paper[];
  readonly entries: readonly Entry[];
  /** Records nothing here can read, kept as they are; those that are here already too, like papers and entries. */
  readonly unreadable: readonly unknown[];
  /** Files that the store lacks and what arrives needs; kept before the rest is written. */
  readonly files: readonly CopyFile[];
  /** Rows of the table, whole. */
  readonly exchanged: readonly Exchanged[];
  /** Letters of other devices, which this one must not number papers with. */
  readonly lettersTaken: readonly string[];
  /** When the copy was made, where it is a whole one and holds all that will be here; else null. */
  readonly heldIn: number | null;
  /** Ids of drafts that stay as they are; of all others live ones are removed. */
  readonly staying: 'all' | readonly string[];
  /** What is removed: live drafts here in the place of which nothing comes. Empty when brought in beside. */
  readonly goes: readonly Stored[];
  /** What is here and not in theirs, which takes its place. */
  readonly goesBack: readonly DraftMeeting[];
}
