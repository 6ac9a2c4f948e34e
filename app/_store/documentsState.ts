import type { BackendOpening } from '@/app/_backend/deviceBackend';
import type { SaveFailure } from '@/app/_backend/saveFailure';
import type { Arrived } from '@/app/_transactions/arrive';
import type { Overwritten } from '@/app/_transactions/commitEdit';
import type { Device } from '@/app/_transactions/deviceIdentity';
import type { MovedDocument } from '@/app/_transactions/moveInHistory';
import type { StillNamed } from '@/lib/erasing/planErasure';
import type { EntryBodies } from '@/lib/kinds/entryKinds';
import type { PaperBodies } from '@/lib/kinds/paperKinds';
import type { UnreadableRecord } from '@/lib/stored/openRecord';
import type { EditFinding } from '@/lib/stored/prepareEdit';
import type { AnyDocument, Bodies } from '@/lib/stored/registry';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { EntriesByKind, Happened, PapersByKind } from './happenedState';
import type { ByKind } from './kindsOf';
import type { LostStore } from './lostStore';

/** Whether what is on the screen is on the device as well. */
export type SaveState =
  | { readonly state: 'kept'; readonly at: number }
  | { readonly state: 'keeping' }
  | { readonly state: 'notKept'; readonly why: SaveFailure };

/** How far the store is. */
export type StoreStatus =
  | { readonly status: 'opening'; readonly waitingFor: 'storage' | 'otherTab' }
  | { readonly status: 'ready' }
  /** The maker's own things were here at the last visit, and the store is empty: the browser has cleared it. */
  | { readonly status: 'wiped'; readonly since: number }
  | {
      readonly status: 'failed';
      /** `examplesMissing`: what a first visit starts with could not be fetched; `schemasMissing`: what reads rare kinds. */
      readonly why:
        | Extract<BackendOpening, { state: 'failed' }>['why']
        | 'examplesMissing'
        | 'schemasMissing';
    };

/** What the clock says, and what it said at the latest entry of this device, in milliseconds since 1970. */
export interface ClockBehind {
  readonly deviceClock: number;
  readonly lastEntry: number;
}

/** Everything a screen shows of the documents. A new object whenever something changed. */
export type DocumentsState<
  Kinds extends Bodies,
  Papers extends Bodies = PaperBodies,
  Entries extends Bodies = EntryBodies,
> = StoreStatus & {
  /** Live documents in the order of their ids; a document that did not change stays the same object. */
  readonly documents: readonly AnyDocument<Kinds>[];
  /** The live documents by kind; a kind in which nothing changed stays the same object, and so do its lists. */
  readonly kinds: ByKind<Kinds>;
  /** Deleted documents, which stay so that they can be brought back; in the order of their ids. */
  readonly removed: readonly AnyDocument<Kinds>[];
  /** What happened and counts, by kind and in order; a kind in which nothing changed stays the same list. */
  readonly entries: EntriesByKind<Entries>;
  /** What went out, by kind and in order, with those that were withdrawn. */
  readonly papers: PapersByKind<Papers>;
  /** All of these together, in the one order: nothing moves in it because something else is taken back. */
  readonly happened: Happened<Papers, Entries>;
  /** Who numbers here; null until the first entry or paper. */
  readonly device: Device | null;
  /** When the copy was made that everything here last was in; null where none was ever noted. */
  readonly lastCopyAt: number | null;
  /** Until when that copy holds what was changed here; null as above. */
  readonly copiedUpTo: number | null;
  /** The clock stands before what this device noted last, so days may be noted wrongly; null where it does not. */
  readonly clockBehind: ClockBehind | null;
  readonly unreadable: readonly UnreadableRecord[];
  readonly kept: SaveState;
  /** What undo takes back, in words; null where there is nothing. */
  readonly undoLabel: string | null;
  readonly redoLabel: string | null;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** Fields that another tab had set otherwise and the last write overwrote. */
  readonly overwritten: readonly Overwritten[];
  /** The browser deleted the store under this page, and all that the page held was written back; null where not. */
  readonly lostStore: LostStore | null;
};

export type EditOutcome =
  | { readonly state: 'shown' }
  | { readonly state: 'unchanged' }
  | { readonly state: 'notOpen' }
  | { readonly state: 'refused'; readonly findings: readonly EditFinding[] };

/** An entry that undo or redo has taken back or made count again. */
export interface MovedEntry {
  readonly entry: Entry;
  readonly counts: boolean;
}

export type MoveOutcome =
  | {
      readonly state: 'moved';
      readonly label: string;
      readonly moved: readonly MovedDocument[];
      readonly entries: readonly MovedEntry[];
    }
  | { readonly state: 'nothing' }
  /** What the step held can no longer be read; it is not offered again. */
  | { readonly state: 'lost'; readonly label: string }
  | { readonly state: 'notKept'; readonly why: SaveFailure };

export type ReplaceOutcome =
  /** `newLetter`: what came was numbered by a copy of this profile, so this device numbers with another letter now. */
  | { readonly state: 'replaced'; readonly newLetter?: string }
  | { readonly state: 'notKept'; readonly why: SaveFailure };

export type ArriveOutcome =
  | ({ readonly state: 'arrived' } & Pick<Arrived, 'clashing' | 'isRenamed'>)
  | { readonly state: 'notKept'; readonly why: SaveFailure };

export type IssueOutcome =
  | { readonly state: 'issued'; readonly paper: Paper }
  /** Nothing of it is kept: neither the paper nor its number. */
  | { readonly state: 'notKept'; readonly why: SaveFailure };

export type MadeOutcome =
  | IssueOutcome
  /** Each time it was made, another tab had been given its number meanwhile. Nothing of it is kept. */
  | { readonly state: 'overtaken' };

export type EraseOutcome =
  | {
      readonly state: 'erased';
      /** Papers that went out stay as they went. */
      readonly papersKept: readonly Paper[];
      /** Where the name may stand still, its own orders and jobs included. */
      readonly stillNamed: readonly StillNamed[];
    }
  | { readonly state: 'noSuchCustomer' }
  | { readonly state: 'notKept'; readonly why: SaveFailure };
