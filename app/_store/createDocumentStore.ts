import { changedPath } from '@/lib/stored/changedPath';
import { addPending, type PendingEdit } from '@/lib/stored/pendingEdits';
import { type Edit, prepareEdit } from '@/lib/stored/prepareEdit';
import type { Bodies } from '@/lib/stored/registry';
import { createBackendConnection } from './backendConnection';
import { backupOf } from './backupOf';
import { commitEdit } from './commitEdit';
import type { DocumentActions, DocumentStore, DocumentStoreOptions } from './documentStore';
import type { EditOutcome, MoveOutcome, ReplaceOutcome, SaveState } from './documentsState';
import { fileReader } from './fileReader';
import { fillEmpty } from './fillEmpty';
import { formerBodies } from './formerBodies';
import { fullBackup } from './fullBackup';
import { type HistoryMove, moveInHistory } from './moveInHistory';
import { newDocuments } from './newDocuments';
import { openStore } from './openStore';
import { absorb, readBackend } from './readBackend';
import { type Replacement, replaceAll } from './replaceAll';
import { replacingActions } from './replacingActions';
import type { SaveFailure } from './saveFailure';
import type { TabMessages } from './tabMessages';
import { emptyTabState, isUnkept, shownDocuments, type TabState, viewOf } from './tabState';
import { createWriteQueue } from './writeQueue';

/**
 * The documents of one tab: shown from memory, kept on the device, and in step with the other tabs.
 * Every change goes through `hold`, which makes the next state for the screens.
 */
export function createDocumentStore<Kinds extends Bodies>(
  options: DocumentStoreOptions<Kinds>,
): DocumentStore<Kinds> {
  const { registry, tab, now } = options;
  const listeners = new Set<() => void>();
  let tabState: TabState = emptyTabState;
  let shown = shownDocuments(tabState, registry, new Map());
  let state = viewOf<Kinds>(tabState, shown, { registry, tab }, null);
  const firstState = state;
  let started: Promise<void> | null = null;
  let reopening: Promise<void> | null = null;
  let messages: TabMessages | null = null;
  let stopWatching = (): void => undefined;

  const hold = (next: Partial<TabState>): void => {
    const moved = next.documents !== undefined || next.pending !== undefined;
    tabState = { ...tabState, ...next };
    if (moved) shown = shownDocuments(tabState, registry, shown);
    state = viewOf<Kinds>(tabState, shown, { registry, tab }, state);
    options.holdPage?.(isUnkept(tabState, connection.onlyInMemory() !== null));
    for (const listener of listeners) listener();
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
    onWaiting: () => {
      if (tabState.status.status === 'opening')
        hold({ status: { status: 'opening', waitingFor: 'otherTab' } });
    },
    onClosed: (why) => hold({ kept: notKept(why) }),
  });

  const refresh = async (ids: readonly string[] | null): Promise<void> => {
    if (tabState.status.status !== 'ready') return;
    // A failed look changes nothing: the next write tells what is wrong.
    const reading = await connection.attempt('read', (tx) => readBackend(tx, registry, ids));
    if (reading.ok) hold(absorb(tabState, reading.value));
  };
  const tell = (ids: readonly string[]): void => {
    if (ids.length > 0) messages?.tell(ids);
  };

  const queue = createWriteQueue({
    pending: () => tabState.pending,
    write: (edit) =>
      connection.attempt(edit.files === undefined ? 'write' : 'writeStrict', (tx) =>
        commitEdit(tx, registry, { ...edit, tab }),
      ),
    keeping,
    written: (edit, { documents, steps, overwritten }) => {
      hold({
        ...absorb(tabState, { documents, steps }),
        pending: tabState.pending.filter((other) => other !== edit),
        overwritten: overwritten.length > 0 ? overwritten : tabState.overwritten,
      });
      tell(documents.map(({ id }) => id));
    },
    settled: (why) => hold({ kept: settledKept(why) }),
  });

  const reopen = (): Promise<void> => {
    reopening ??= openStore({ ...options, connection, tabState: () => tabState, hold, settledKept })
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

  const takeEdit = (
    label: string,
    edits: readonly Edit<Kinds>[],
    more: Pick<PendingEdit, 'coalesceKey' | 'files'>,
  ): EditOutcome => {
    if (tabState.status.status !== 'ready') return { state: 'notOpen' };
    const prepared = prepareEdit(edits, shown, registry);
    if (!prepared.ok) return { state: 'refused', findings: prepared.problem };
    if (prepared.value.length === 0) return { state: 'unchanged' };
    const waiting = queue.waiting();
    const taken = tabState.pending.slice(0, tabState.pending.length - waiting.length);
    const next = { label, at: now(), changes: prepared.value, ...more };
    hold({ pending: [...taken, ...addPending(waiting, next)], takenBack: [] });
    if (next.coalesceKey === undefined) void queue.flush();
    else queue.flushSoon();
    return { state: 'shown' };
  };

  /** An edit that could not be kept is not in the history yet: it is taken back in memory. */
  const moveUnkept = (direction: HistoryMove['direction']): MoveOutcome | null => {
    const from = direction === 'undo' ? tabState.pending : tabState.takenBack;
    const moving = from.at(-1);
    if (moving === undefined) return null;
    if (direction === 'undo') {
      hold({ pending: tabState.pending.slice(0, -1), takenBack: [...tabState.takenBack, moving] });
    } else {
      hold({ pending: [...tabState.pending, moving], takenBack: tabState.takenBack.slice(0, -1) });
    }
    void queue.flush();
    return {
      state: 'moved',
      label: moving.label,
      moved: moving.changes.map(({ kind, id, before, after }) => ({
        kind,
        id,
        path: changedPath(before?.body, after.body),
      })),
    };
  };

  const move = async (direction: HistoryMove['direction']): Promise<MoveOutcome> => {
    await queue.flush();
    const unkept = moveUnkept(direction);
    if (unkept !== null) return unkept;
    keeping();
    const outcome = await connection.attempt('write', (tx) =>
      moveInHistory(tx, registry, { direction, tab, at: now() }),
    );
    const why = outcome.ok ? (outcome.value.state === 'refused' ? outcome.value.why : null) : outcome.problem;
    hold({ kept: settledKept(why) });
    if (!outcome.ok) return { state: 'notKept', why: outcome.problem };
    const moved = outcome.value;
    if (moved.state === 'nothing') return moved;
    if (moved.state === 'refused') return { state: 'notKept', why: moved.why };
    const documents = moved.state === 'moved' ? moved.documents : [];
    hold(absorb(tabState, { documents, steps: moved.steps }));
    tell(documents.map(({ id }) => id));
    return moved.state === 'moved'
      ? { state: 'moved', label: moved.label, moved: moved.moved }
      : { state: 'lost', label: moved.label };
  };

  const replace = async (replacement: Omit<Replacement, 'tab' | 'at'>): Promise<ReplaceOutcome> => {
    await queue.flush();
    const outcome = await connection.attempt('writeStrict', (tx) =>
      replaceAll(tx, registry, { ...replacement, tab, at: now() }),
    );
    hold({ kept: settledKept(outcome.ok ? null : outcome.problem), takenBack: [] });
    if (!outcome.ok) return { state: 'notKept', why: outcome.problem };
    await rereadAfter(outcome.value);
    return { state: 'replaced' };
  };

  const rereadAfter = async (ids: readonly string[]): Promise<void> => {
    const reading = await connection.attempt('read', (tx) => readBackend(tx, registry, null));
    if (reading.ok) hold(absorb(tabState, reading.value));
    tell(ids);
  };

  const readFile = fileReader(connection, () => tabState.pending);

  const actions: DocumentActions<Kinds> = {
    edit: (label, edits, coalesceKey) =>
      takeEdit(label, edits, coalesceKey === undefined ? {} : { coalesceKey }),
    editWithFiles: (label, edits, files) => takeEdit(label, edits, { files }),
    readFile,
    ...replacingActions<Kinds>({ registry, now, replace }),
    formerBodies: async (kind, id) => {
      const read = await connection.attempt('read', (tx) => formerBodies(tx, id, registry[kind]));
      return read.ok ? read.value : [];
    },
    undo: () => move('undo'),
    redo: () => move('redo'),
    retry: async () => {
      if (tabState.status.status !== 'ready' || tabState.kept.state === 'notKept') await reopen();
      if (tabState.status.status === 'ready') await queue.flush();
    },
    fill: async (documents) => {
      const first = newDocuments(documents, registry, now());
      const filled = await connection.attempt('writeStrict', (tx) => fillEmpty(tx, first, now()));
      if (filled.ok && filled.value) await rereadAfter(first.map(({ id }) => id));
      return filled.ok && filled.value;
    },
    exportAll: () => backupOf(shown, state.unreadable, now()),
    exportWithFiles: () => fullBackup(backupOf(shown, state.unreadable, now()), readFile),
    acknowledgeOverwritten: () => hold({ overwritten: [] }),
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
