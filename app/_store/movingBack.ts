import { type HistoryMove, moveInHistory } from '@/app/_transactions/moveInHistory';
import { changedPath } from '@/lib/merging/changedPath';
import type { Bodies } from '@/lib/stored/registry';
import { takenBy } from '@/lib/stored/takeBack';
import type { Entry } from '@/shared/schemas/happened';
import type { DocumentActions } from './documentStore';
import type { MovedEntry, MoveOutcome } from './documentsState';
import type { StoreCore } from './storeCore';

/** Undo and redo, of what is kept and of what still waits to be. */
export function movingBack<Kinds extends Bodies>(
  core: StoreCore,
): Pick<DocumentActions<Kinds>, 'undo' | 'redo'> {
  const { kinds, tab, now, connection, queue, tabState, hold } = core;

  /** An edit that could not be kept is not in the history yet: it is taken back in memory. */
  const moveUnkept = (direction: HistoryMove['direction']): MoveOutcome | null => {
    const from = direction === 'undo' ? tabState().pending : tabState().takenBack;
    const moving = from.at(-1);
    if (moving === undefined) return null;
    const { pending, takenBack } = tabState();
    if (direction === 'undo') hold({ pending: pending.slice(0, -1), takenBack: [...takenBack, moving] });
    else hold({ pending: [...pending, moving], takenBack: takenBack.slice(0, -1) });
    void queue.flush();
    return {
      state: 'moved',
      label: moving.label,
      moved: moving.changes.map(({ kind, id, before, after }) => ({
        kind,
        id,
        path: changedPath(before?.body, after.body),
      })),
      entries: (moving.entries ?? []).map((entry) => movedEntry(entry, direction === 'redo')),
    };
  };

  /** What was taken back by the step counts again, where that is undone. */
  const movedEntry = (first: Entry, doesCount: boolean): MovedEntry => {
    let [entry, counts] = [first, doesCount];
    // By hand several may take each other back in a ring.
    const seen = new Set<Entry>();
    for (let target = targetOf(entry); target !== undefined && !seen.has(target); target = targetOf(entry)) {
      seen.add(target);
      [entry, counts] = [target, !counts];
    }
    return { entry, counts };
  };
  const targetOf = (entry: Entry): Entry | undefined => tabState().entries.get(takenBy(entry) ?? '');
  const movedEntries = (ids: readonly string[], counts: boolean): readonly MovedEntry[] =>
    ids.flatMap((id) => {
      const entry = tabState().entries.get(id);
      return entry === undefined ? [] : [movedEntry(entry, counts)];
    });

  const move = async (direction: HistoryMove['direction']): Promise<MoveOutcome> => {
    await queue.flush();
    const unkept = moveUnkept(direction);
    if (unkept !== null) return unkept;
    core.keeping();
    const outcome = await connection.attempt('write', (tx) =>
      moveInHistory(tx, kinds, { direction, tab, at: now() }),
    );
    const why = outcome.ok ? (outcome.value.state === 'refused' ? outcome.value.why : null) : outcome.problem;
    hold({ kept: core.settledKept(why) });
    if (!outcome.ok) return { state: 'notKept', why: outcome.problem };
    const moved = outcome.value;
    if (moved.state === 'nothing') return moved;
    if (moved.state === 'refused') return { state: 'notKept', why: moved.why };
    if (moved.state === 'lost') {
      core.wrote({ documents: [], entries: [], steps: moved.steps });
      return { state: 'lost', label: moved.label };
    }
    core.wrote(moved);
    return {
      state: 'moved',
      label: moved.label,
      moved: moved.moved,
      entries: movedEntries(moved.noted, direction === 'redo'),
    };
  };

  return { undo: () => move('undo'), redo: () => move('redo') };
}
