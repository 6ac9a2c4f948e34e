import type { BackendConnectionOptions } from '@/app/_backend/backendConnection';
import type { CopyActions } from '@/app/_store/copies/copyActions';
import type { TabMessages } from '@/app/_tab/tabMessages';
import type { PageEvents } from '@/app/_tab/watchPage';
import type { ArrivalMode, Arriving } from '@/app/_transactions/arrive';
import type { NewPaper } from '@/app/_transactions/issuePaper';
import type { EntryBodies } from '@/lib/kinds/entryKinds';
import type { PaperBodies } from '@/lib/kinds/paperKinds';
import type { NewEntry } from '@/lib/stored/newEntries';
import type { Edit } from '@/lib/stored/prepareEdit';
import type { Bodies, EntryRegistry, PaperRegistry, Registry } from '@/lib/stored/registry';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { WithdrawalReason } from '@/shared/schemas/entries';
import type { Entry } from '@/shared/schemas/happened';
import type {
  ArriveOutcome,
  DocumentsState,
  EditOutcome,
  EraseOutcome,
  IssueOutcome,
  MadeOutcome,
  MoveOutcome,
  ReplaceOutcome,
} from './documentsState';
import type { NewDocument } from './newDocuments';
import type { PaperToMake } from './paperToMake';
import type { VisitMark } from './visitMark';

export interface DocumentStoreOptions<
  Kinds extends Bodies,
  Papers extends Bodies = PaperBodies,
  Entries extends Bodies = EntryBodies,
> {
  readonly registry: Registry<Kinds>;
  readonly paperKinds: PaperRegistry<Papers>;
  readonly entryKinds: EntryRegistry<Entries>;
  /** Fetches what reads rare kinds; without it all is here. The store reads nothing before. */
  readonly fetchRare?: () => Promise<void>;
  /** Names this tab in the history; the same again after a reload. */
  readonly tab: string;
  readonly now: () => number;
  readonly openBackend: BackendConnectionOptions['openBackend'];
  readonly openMessages: (onWrote: (ids: readonly string[]) => void) => TabMessages;
  readonly watchPage: (on: PageEvents) => () => void;
  /** Told whether something would be lost with the page. */
  readonly holdPage?: (isHeld: boolean) => void;
  /** What is known of earlier visits apart from the store. */
  readonly visits?: VisitMark;
  /** What a store that never held anything starts with, and the words for putting it there. */
  readonly examples?: {
    readonly label: string;
    readonly load: () => Promise<readonly NewDocument<Kinds>[]>;
    /** What is noted of them. */
    readonly loadEntries?: () => Promise<readonly NewEntry[]>;
  };
}

/** What a screen can do with the documents. Every function is the same for as long as the store lives. */
export interface DocumentActions<
  Kinds extends Bodies,
  Papers extends Bodies = PaperBodies,
  Entries extends Bodies = EntryBodies,
> extends CopyActions {
  /** Shows the edit at once and keeps it. Edits of one `coalesceKey` in quick succession undo as one. */
  readonly edit: (label: string, edits: readonly Edit<Kinds>[], coalesceKey?: string) => EditOutcome;
  /** The same with files that the edit names: files and documents are kept together or not at all. */
  readonly editWithFiles: (
    label: string,
    edits: readonly Edit<Kinds>[],
    files: readonly StoredFile[],
  ) => EditOutcome;
  /** The id under which an entry was shown first, which it keeps for a screen when the write gives it its own. */
  readonly firstId: (id: string) => string;
  /**
   * Notes what happened, with edits that belong to it and files that either names, as one step: shown at once and kept
   * like an edit. Undo takes the entries back by further ones.
   */
  readonly note: (
    label: string,
    entries: readonly NewEntry<Entries>[],
    edits?: readonly Edit<Kinds>[],
    files?: readonly StoredFile[],
  ) => EditOutcome;
  /** Numbers a paper and keeps it with its file, all or nothing, as one step; undo withdraws it. */
  readonly issue: (label: string, paper: NewPaper<Papers>) => Promise<IssueOutcome>;
  /**
   * The same for a paper whose file takes time: it is made for the next number, and issued only if that is the next
   * one still; else it is made again.
   *
   * @param onOvertaken called when another tab was given the number meanwhile, before it is made again
   * @returns what `make` throws is thrown on, with nothing kept
   */
  readonly issueMade: (
    label: string,
    paper: PaperToMake<Papers>,
    onOvertaken?: () => void,
  ) => Promise<MadeOutcome>;
  /** Takes a paper back that went out. It stays kept, and its number is never given again. */
  readonly withdraw: (label: string, paperId: string, why?: WithdrawalReason) => EditOutcome;
  /** Every entry that can be read, in the one order: those taken back and those that took back as well. */
  readonly allEntries: () => readonly Entry[];
  /** A kept file, or one that waits to be kept; null where there is none. */
  readonly readFile: (id: string) => Promise<StoredFile | null>;
  /** What a document held before each step of the kept history, the latest first; what cannot be read is left out. */
  readonly formerBodies: <Kind extends keyof Kinds & string>(
    kind: Kind,
    id: string,
  ) => Promise<readonly Kinds[Kind][]>;
  readonly undo: () => Promise<MoveOutcome>;
  readonly redo: () => Promise<MoveOutcome>;
  /** Tries again to open the store and to keep what is not kept. */
  readonly retry: () => Promise<void>;
  /** Begins with the example in a store that was wiped. */
  readonly beginAgain: () => Promise<void>;
  /** Puts documents into a store that has never held any; tells whether it did. */
  readonly fill: (documents: readonly NewDocument<Kinds>[]) => Promise<boolean>;
  /**
   * Puts documents beside all that are there, as one step to undo. One of the same id makes way: a deleted one,
   * or a record that cannot be read, which is moved aside and stays kept.
   */
  readonly putBeside: (label: string, documents: readonly NewDocument<Kinds>[]) => Promise<ReplaceOutcome>;
  /** Takes in what came from a copy or another device, all of it or nothing, as one step to undo. */
  readonly arrive: (label: string, arriving: Arriving, how: ArrivalMode) => Promise<ArriveOutcome>;
  /**
   * Erases a customer who asks for it, from drafts, entries and the history; papers stay. Never undone.
   *
   * @param day the maker's own, YYYY-MM-DD
   */
  readonly erase: (customerId: string, day: string) => Promise<EraseOutcome>;
  /** The maker has read which fields were overwritten. */
  readonly acknowledgeOverwritten: () => void;
  /** The maker has read that the store was deleted. */
  readonly acknowledgeLostStore: () => void;
}

export interface DocumentStore<
  Kinds extends Bodies,
  Papers extends Bodies = PaperBodies,
  Entries extends Bodies = EntryBodies,
> {
  readonly subscribe: (listener: () => void) => () => void;
  readonly getState: () => DocumentsState<Kinds, Papers, Entries>;
  /** The state before anything is opened, which is all the server ever sees. */
  readonly getFirstState: () => DocumentsState<Kinds, Papers, Entries>;
  readonly actions: DocumentActions<Kinds, Papers, Entries>;
  /** Opens the store, once however often it is called. */
  readonly open: () => Promise<void>;
  readonly flush: () => Promise<void>;
  readonly close: () => void;
}
