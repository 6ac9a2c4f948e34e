import { createBackendConnection } from '@/app/_backend/backendConnection';
import type { SaveFailure } from '@/app/_backend/saveFailure';
import { copying } from '@/app/_store/copies/copying';
import { takingEdits } from '@/app/_store/copies/takingEdits';
import type { TabMessages } from '@/app/_tab/tabMessages';
import { commitEdit } from '@/app/_transactions/commitEdit';
import { fillEmpty, fillLater } from '@/app/_transactions/fillEmpty';
import { formerBodies } from '@/app/_transactions/formerBodies';
import { settleRecords } from '@/app/_transactions/settleRecords';
import type { EntryBodies } from '@/lib/kinds/entryKinds';
import type { PaperBodies } from '@/lib/kinds/paperKinds';
import { inOrder } from '@/lib/stored/entriesInForce';
import { mustReachDisk } from '@/lib/stored/pendingEdits';
import type { Bodies, StoreKinds } from '@/lib/stored/registry';
import type { DocumentActions, DocumentStore, DocumentStoreOptions } from './documentStore';
import type { SaveState } from './documentsState';
import { erasing } from './erasing';
import { fileReader } from './fileReader';
import { happenedViewer } from './happenedView';
import { issuing } from './issuing';
import { movingBack } from './movingBack';
import { newDocuments } from './newDocuments';
import { openStore } from './openStore';
import { absorb, readBackend } from './readBackend';
import { replacingActions } from './replacingActions';
import type { StoreCore } from './storeCore';
import { ensureSameStore } from './storeIdentity';
import { emptyTabState, isUnkept, shownDocuments, type TabState } from './tabState';
import { viewOf } from './viewOf';
import { entriesToWrite, withGivenIds } from './withGivenIds';
import { createWriteQueue } from './writeQueue';

/**
 * The documents of one tab: shown from memory, kept on the device, and in step with the other tabs.
 * Every change goes through `hold`, which makes the next state for the screens.
 */
export function createDocumentStore<
  Kinds extends Bodies,
  Papers extends Bodies = PaperBodies,
  Entries extends Bodies = EntryBodies,
>(options: DocumentStoreOptions<Kinds, Papers, Entries>): DocumentStore<Kinds, Papers, Entries> {
  const { registry, tab, now } = options;
  const kinds: StoreKinds = options;
  const listeners = new Set<() => void>();
  let tabState: TabState = emptyTabState;
  let shown = shownDocuments(tabState, registry, new Map());
  const happened = happenedViewer<Papers, Entries>(kinds);
  // Before anything is opened nothing was noted that a clock could be held against.
  let state = viewOf<Kinds, Papers, Entries>(
    tabState,
    shown,
    happened(tabState),
    { registry, tab, now: 0 },
    null,
  );
  const firstState = state;
  let started: Promise<void> | null = null;
  let reopening: Promise<void> | null = null;
  let messages: TabMessages | null = null;
  let stopWatching = (): void => undefined;
  let beginsAgain = false;
  let notedOwn: boolean | null = null;

  const hold = (next: Partial<TabState>): void => {
    const moved = next.documents !== undefined || next.pending !== undefined;
    tabState = { ...tabState, ...next };
    if (moved) shown = shownDocuments(tabState, registry, shown);
    state = viewOf(tabState, shown, happened(tabState), { registry, tab, now: now() }, state);
    noteVisit();
    options.holdPage?.(isUnkept(tabState, connection.onlyInMemory() !== null));
    for (const listener of listeners) listener();
  };
  /** Once the example is touched there is something of the maker's own. */
  const noteVisit = (): void => {
    const { status, kept, steps } = tabState;
    if (status.status !== 'ready' || kept.state !== 'kept' || connection.onlyInMemory() !== null) return;
    const holdsOwn = steps.length > 0;
    if (holdsOwn !== notedOwn) options.visits?.note({ at: now(), holdsOwn });
    notedOwn = holdsOwn;
  };
  const notKept = (why: SaveFailure): SaveState => ({ state: 'notKept', why });
  const settledKept = (why: SaveFailure | null): SaveState => {
    const reason = why ?? connection.onlyInMemory();
    return reason === null ? { state: 'kept', at: now() } : notKept(reason);
  };
  const keeping = (): void => {
    if (tabState.kept.state !== 'keeping' && connection.onlyInMemory() === null) {
      hold({ kept: { state: 'keeping' } });
    }
  };

  const connection = createBackendConnection({
    openBackend: options.openBackend,
    beforeWriting: async (tx) => {
      await settleRecords(tx, registry);
      const { storeId, lost } = await ensureSameStore(tx, tabState, now());
      return () => {
        if (storeId !== tabState.storeId) hold({ storeId, lostStore: lost ?? tabState.lostStore });
        if (lost !== null) tell([...tabState.documents.keys()]);
      };
    },
    onWaiting: () => {
      if (tabState.status.status === 'opening')
        hold({ status: { status: 'opening', waitingFor: 'otherTab' } });
    },
    onClosed: (why) => hold({ kept: notKept(why) }),
  });

  const refresh = async (ids: readonly string[] | null): Promise<void> => {
    if (tabState.status.status === 'wiped') return reopen();
    if (tabState.status.status !== 'ready') return;
    // A failed look changes nothing: the next write tells what is wrong.
    const reading = await connection.attempt('read', (tx) => readBackend(tx, kinds, ids, tabState));
    if (reading.ok) hold(absorb(tabState, reading.value));
  };
  const tell = (ids: readonly string[]): void => {
    if (ids.length > 0) messages?.tell(ids);
  };

  const wrote: StoreCore['wrote'] = (written, more = {}) => {
    hold({ ...absorb(tabState, written), ...more });
    tell([...written.documents, ...written.entries, ...(written.papers ?? [])].map(({ id }) => id));
  };

  const queue = createWriteQueue({
    pending: () => tabState.pending,
    write: (edit) =>
      connection.attempt(mustReachDisk(edit) ? 'writeStrict' : 'write', (tx) =>
        (edit.isFirst ? fillLater : commitEdit)(tx, kinds, {
          ...edit,
          ...entriesToWrite(edit, tabState),
          tab,
        }),
      ),
    keeping,
    written: (edit, written) =>
      wrote(written, {
        ...withGivenIds(tabState, edit, written.entries, kinds.entryKinds),
        overwritten: written.overwritten.length > 0 ? written.overwritten : tabState.overwritten,
      }),
    settled: (why) => hold({ kept: settledKept(why) }),
  });

  const reopen = (): Promise<void> => {
    reopening ??= openStore({
      ...{ ...options, connection, hold, settledKept, rereadAfter, beginsAgain },
      tabState: () => tabState,
    })
      .then(() => (tabState.pending.length > 0 ? queue.flush() : undefined))
      .finally(() => {
        reopening = null;
      });
    return reopening;
  };

  /** Nothing outside is touched before this: on the server the store is only looked at. */
  const start = (): Promise<void> => {
    messages = options.openMessages((ids) => void refresh(ids));
    stopWatching = options.watchPage({
      leaving: () => {
        if (tabState.pending.length > 0) void queue.flush();
      },
      fieldLeft: queue.flushTyped,
      shown: () => void refresh(null),
    });
    return reopen();
  };

  const rereadAfter = async (ids: readonly string[]): Promise<void> => {
    const reading = await connection.attempt('read', (tx) => readBackend(tx, kinds, null, tabState));
    const status = tabState.status.status === 'wiped' ? ({ status: 'ready' } as const) : tabState.status;
    if (reading.ok) hold({ ...absorb(tabState, reading.value), status });
    tell(ids);
  };

  const readFile = fileReader(connection, () => tabState.pending);
  const core: StoreCore = {
    ...{ kinds, tab, now, connection, queue, hold, keeping, settledKept, wrote, rereadAfter },
    tabState: () => tabState,
    shown: () => shown,
    inForce: () => state.entries,
  };

  const replacing = replacingActions<Kinds>(core);
  const actions: DocumentActions<Kinds, Papers, Entries> = {
    ...takingEdits<Kinds, Papers, Entries>(core),
    ...movingBack(core),
    ...issuing<Papers>(core),
    allEntries: () =>
      inOrder([...tabState.entries.values(), ...tabState.pending.flatMap(({ entries = [] }) => entries)]),
    ...erasing<Kinds>(core),
    readFile,
    ...replacing,
    ...copying(core, {
      ...{ readFile, arrive: replacing.arrive },
      opened: () => reopening ?? Promise.resolve(),
    }),
    formerBodies: async (kind, id) => {
      const read = await connection.attempt('read', (tx) => formerBodies(tx, id, registry[kind]));
      return read.ok ? read.value : [];
    },
    retry: async () => {
      if (tabState.status.status !== 'ready' || tabState.kept.state === 'notKept') await reopen();
      if (tabState.status.status === 'ready') await queue.flush();
    },
    beginAgain: () => {
      beginsAgain = true;
      return reopen();
    },
    fill: async (documents) => {
      const first = newDocuments(documents, registry, now());
      const filled = await connection.attempt('writeStrict', (tx) => fillEmpty(tx, first, now()));
      if (filled.ok && filled.value) await rereadAfter(first.map(({ id }) => id));
      return filled.ok && filled.value;
    },
    acknowledgeOverwritten: () => hold({ overwritten: [] }),
    acknowledgeLostStore: () => hold({ lostStore: null }),
  };

  return {
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    getState: () => state,
    getFirstState: () => firstState,
    actions,
    open: () => {
      started ??= start();
      return started;
    },
    flush: queue.flush,
    close: () => {
      stopWatching();
      messages?.close();
      connection.close();
    },
  };
}
