import type { Overwritten } from '@/app/_transactions/commitEdit';
import type { Device } from '@/app/_transactions/deviceIdentity';
import type { LastCopy } from '@/app/_transactions/lastCopy';
import { keepSame } from '@/lib/merging/keepSame';
import { sameValue } from '@/lib/merging/sameValue';
import type { UnreadableRecord } from '@/lib/stored/openRecord';
import { overlayPending, type PendingEdit } from '@/lib/stored/pendingEdits';
import { bodyFits, type Registry } from '@/lib/stored/registry';
import type { Step } from '@/lib/stored/step';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { Stored } from '@/shared/schemas/stored';
import type { SaveState, StoreStatus } from './documentsState';
import type { LostStore } from './lostStore';

/** What one tab holds in memory. */
export interface TabState {
  readonly status: StoreStatus;
  /** As last read from or written to the store, tombstones included. */
  readonly documents: ReadonlyMap<string, Stored>;
  readonly unreadable: ReadonlyMap<string, UnreadableRecord>;
  /** Every entry that can be read, those taken back and the taking back included. */
  readonly entries: ReadonlyMap<string, Entry>;
  readonly papers: ReadonlyMap<string, Paper>;
  /** Entries and papers that nothing here can read. */
  readonly unreadableHappened: ReadonlyMap<string, UnreadableRecord>;
  /** When something was last erased, as it was when the entries were read. */
  readonly lastErasure: number;
  /** Null until this device counts its first entry or paper. */
  readonly device: Device | null;
  /** The copy that everything was last in; null where none was ever noted. */
  readonly lastCopy: LastCopy | null;
  /** Ids that entries had while they waited, and those they were written under. */
  readonly givenIds: ReadonlyMap<string, string>;
  /** Entries that went into a copy while they waited, as they went, by the ids they wait under. */
  readonly wentOut: ReadonlyMap<string, Entry>;
  readonly aside: readonly UnreadableRecord[];
  readonly steps: readonly Step[];
  /** Edits that are shown but not kept, in order. */
  readonly pending: readonly PendingEdit[];
  /** Edits taken back before they were kept. */
  readonly takenBack: readonly PendingEdit[];
  readonly kept: SaveState;
  readonly overwritten: readonly Overwritten[];
  /** The store that was read first or written to last; null until it has a name. */
  readonly storeId: string | null;
  /** Told until the maker has read it. */
  readonly lostStore: LostStore | null;
}

export const emptyTabState: TabState = {
  status: { status: 'opening', waitingFor: 'storage' },
  documents: new Map(),
  unreadable: new Map(),
  entries: new Map(),
  papers: new Map(),
  unreadableHappened: new Map(),
  lastErasure: 0,
  device: null,
  lastCopy: null,
  givenIds: new Map(),
  wentOut: new Map(),
  aside: [],
  steps: [],
  pending: [],
  takenBack: [],
  kept: { state: 'keeping' },
  overwritten: [],
  storeId: null,
  lostStore: null,
};

/** @returns the documents as the maker sees them, tombstones included; unchanged ones as the same objects. */
export function shownDocuments(
  tabState: TabState,
  registry: Registry,
  before: ReadonlyMap<string, Stored>,
): ReadonlyMap<string, Stored> {
  const shown = overlayPending(tabState.documents, tabState.pending, (kind, body) =>
    bodyFits(registry, kind, body),
  );
  return new Map([...shown].map(([id, document]) => [id, settled(document, before.get(id))]));
}

/**
 * Whether something would be lost with the page.
 *
 * @param onlyInMemory true where the device keeps nothing
 */
export const isUnkept = (tabState: TabState, onlyInMemory: boolean): boolean =>
  tabState.status.status === 'ready' &&
  (tabState.pending.length > 0 ||
    tabState.kept.state === 'keeping' ||
    (onlyInMemory && tabState.steps.length > 0));

/** Screens compare by identity: a document written as it was shown must not look like another one, nor a part of it. */
function settled(document: Stored, before: Stored | undefined): Stored {
  if (before === undefined || before === document) return document;
  const body = keepSame(before.body, document.body);
  const same = body === before.body && sameValue({ ...before, body: null }, { ...document, body: null });
  return same ? before : { ...document, body };
}
