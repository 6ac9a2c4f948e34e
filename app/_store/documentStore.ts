import type { Edit } from '@/lib/stored/prepareEdit';
import type { Bodies, Registry } from '@/lib/stored/registry';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { Backup } from '@/shared/schemas/stored';
import type { BackendConnectionOptions } from './backendConnection';
import type {
  DocumentsState,
  EditOutcome,
  ImportOutcome,
  MoveOutcome,
  ReplaceOutcome,
} from './documentsState';
import type { FullBackup } from './fullBackup';
import type { NewDocument } from './newDocuments';
import type { TabMessages } from './tabMessages';
import type { PageEvents } from './watchPage';

export interface DocumentStoreOptions<Kinds extends Bodies> {
  readonly registry: Registry<Kinds>;
  /** Names this tab in the history; the same again after a reload. */
  readonly tab: string;
  readonly now: () => number;
  readonly openBackend: BackendConnectionOptions['openBackend'];
  readonly openMessages: (onWrote: (ids: readonly string[]) => void) => TabMessages;
  readonly watchPage: (on: PageEvents) => () => void;
  /** Told whether something would be lost with the page. */
  readonly holdPage?: (isHeld: boolean) => void;
  /** What a store that never held anything starts with, and the words for putting it there. */
  readonly examples?: {
    readonly label: string;
    readonly load: () => Promise<readonly NewDocument<Kinds>[]>;
  };
}

/** What a screen can do with the documents. Every function is the same for as long as the store lives. */
export interface DocumentActions<Kinds extends Bodies> {
  /** Shows the edit at once and keeps it. Edits of one `coalesceKey` in quick succession undo as one. */
  readonly edit: (label: string, edits: readonly Edit<Kinds>[], coalesceKey?: string) => EditOutcome;
  /** The same with files that the edit names: files and documents are kept together or not at all. */
  readonly editWithFiles: (
    label: string,
    edits: readonly Edit<Kinds>[],
    files: readonly StoredFile[],
  ) => EditOutcome;
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
  /** Puts documents into a store that has never held any; tells whether it did. */
  readonly fill: (documents: readonly NewDocument<Kinds>[]) => Promise<boolean>;
  /**
   * Puts documents beside all that are there, as one step to undo. One of the same id makes way: a deleted one,
   * or a record that cannot be read, which is moved aside and stays kept.
   */
  readonly putBeside: (label: string, documents: readonly NewDocument<Kinds>[]) => Promise<ReplaceOutcome>;
  /** Documents alone, from memory: can be had when the store fails. */
  readonly exportAll: () => Backup;
  /** Documents with their files, as far as one file can hold them. */
  readonly exportWithFiles: () => Promise<FullBackup>;
  /**
   * Brings a backup back, all of it or, with the findings, none. One that lacks what all else stands on is brought
   * back only `partly`: then what is here of that stays.
   */
  readonly importAll: (
    label: string,
    file: unknown,
    how?: { readonly partly: boolean },
  ) => Promise<ImportOutcome>;
  /** The maker has read which fields were overwritten. */
  readonly acknowledgeOverwritten: () => void;
}

export interface DocumentStore<Kinds extends Bodies> {
  readonly subscribe: (listener: () => void) => () => void;
  readonly getState: () => DocumentsState<Kinds>;
  /** The state before anything is opened, which is all the server ever sees. */
  readonly getFirstState: () => DocumentsState<Kinds>;
  readonly actions: DocumentActions<Kinds>;
  /** Opens the store, once however often it is called. */
  readonly open: () => Promise<void>;
  readonly flush: () => Promise<void>;
  readonly close: () => void;
}
