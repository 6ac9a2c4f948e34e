import { nextRedo, nextUndo } from '@/lib/stored/history';
import { keepSame } from '@/lib/stored/keepSame';
import { overlayPending, type PendingEdit } from '@/lib/stored/pendingEdits';
import type { UnreadableRecord } from '@/lib/stored/readDocument';
import { type AnyDocument, type Bodies, bodyFits, type Registry } from '@/lib/stored/registry';
import { sameValue } from '@/lib/stored/sameValue';
import type { Step } from '@/lib/stored/step';
import type { Stored } from '@/shared/schemas/stored';
import type { Overwritten } from './commitEdit';
import type { DocumentsState, SaveState, StoreStatus } from './documentsState';
import { kindsOf } from './kindsOf';
import { sameItems } from './sameItems';

/** What one tab holds in memory. */
export interface TabState {
  readonly status: StoreStatus;
  /** As last read from or written to the store, tombstones included. */
  readonly documents: ReadonlyMap<string, Stored>;
  readonly unreadable: ReadonlyMap<string, UnreadableRecord>;
  readonly aside: readonly UnreadableRecord[];
  readonly steps: readonly Step[];
  /** Edits that are shown but not kept, in order. */
  readonly pending: readonly PendingEdit[];
  /** Edits taken back before they were kept. */
  readonly takenBack: readonly PendingEdit[];
  readonly kept: SaveState;
  readonly overwritten: readonly Overwritten[];
}

export const emptyTabState: TabState = {
  status: { status: 'opening', waitingFor: 'storage' },
  documents: new Map(),
  unreadable: new Map(),
  aside: [],
  steps: [],
  pending: [],
  takenBack: [],
  kept: { state: 'keeping' },
  overwritten: [],
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

/** @returns what the screens get. */
export function viewOf<Kinds extends Bodies>(
  tabState: TabState,
  shown: ReadonlyMap<string, Stored>,
  { registry, tab }: { readonly registry: Registry<Kinds>; readonly tab: string },
  before: DocumentsState<Kinds> | null,
): DocumentsState<Kinds> {
  const all = [...shown.values()].toSorted((one, other) => (one.id < other.id ? -1 : 1));
  const live = all.filter(({ deletedAt }) => deletedAt === undefined);
  const removed = all.filter(({ deletedAt }) => deletedAt !== undefined);
  const documents = sameItems(before?.documents, live as unknown as readonly AnyDocument<Kinds>[]);
  const unreadable = [...tabState.unreadable.values(), ...tabState.aside];
  const waits = tabState.pending.length > 0;
  const undoLabel = tabState.pending.at(-1)?.label ?? nextUndo(tabState.steps, tab)?.label ?? null;
  const redoLabel =
    tabState.takenBack.at(-1)?.label ?? (waits ? null : (nextRedo(tabState.steps, tab)?.label ?? null));
  return {
    ...tabState.status,
    documents,
    kinds: kindsOf(registry, before?.kinds ?? null, documents),
    removed: sameItems(before?.removed, removed as unknown as readonly AnyDocument<Kinds>[]),
    unreadable: sameItems(before?.unreadable, unreadable),
    kept: tabState.kept,
    undoLabel,
    redoLabel,
    canUndo: undoLabel !== null,
    canRedo: redoLabel !== null,
    overwritten: tabState.overwritten,
  };
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
