import type { DocumentActions } from '@/app/_store/documentStore';
import type { EditOutcome } from '@/app/_store/documentsState';
import { WAITING_DEVICE, WAITING_ID } from '@/app/_store/happenedState';
import type { StoreCore } from '@/app/_store/storeCore';
import { withRealIds } from '@/app/_store/withGivenIds';
import { isPlainObject } from '@/lib/merging/sameValue';
import { type NewEntry, prepareEntries, type UncountedEntry } from '@/lib/stored/newEntries';
import { addPending, type PendingEdit } from '@/lib/stored/pendingEdits';
import { type Edit, type EditFinding, prepareEdit } from '@/lib/stored/prepareEdit';
import type { Bodies } from '@/lib/stored/registry';
import { TAKE_BACK } from '@/lib/stored/takeBack';
import type { Entry } from '@/shared/schemas/happened';

type TakingEdits<Kinds extends Bodies, Papers extends Bodies, Entries extends Bodies> = Pick<
  DocumentActions<Kinds, Papers, Entries>,
  'edit' | 'editWithFiles' | 'note' | 'withdraw' | 'firstId'
>;

/** What is shown at once and written a moment later. */
export function takingEdits<Kinds extends Bodies, Papers extends Bodies, Entries extends Bodies>(
  core: StoreCore,
): TakingEdits<Kinds, Papers, Entries> {
  const { kinds, now, queue, tabState, hold } = core;
  let waited = 0;

  const take = (
    label: string,
    edits: readonly Edit<Kinds>[],
    entries: readonly NewEntry<Entries>[],
    more: Pick<PendingEdit, 'coalesceKey' | 'files'>,
  ): EditOutcome => {
    if (tabState().status.status !== 'ready') return { state: 'notOpen' };
    const prepared = prepareEdit(edits, core.shown(), kinds.registry);
    const noted = prepareEntries(entries.map(withRealId), kinds.entryKinds, isKnown);
    const findings: readonly EditFinding[] = [
      ...(prepared.ok ? [] : prepared.problem),
      ...(noted.ok ? [] : noted.problem),
    ];
    if (!prepared.ok || !noted.ok) return { state: 'refused', findings };
    if (prepared.value.length === 0 && noted.value.length === 0) return { state: 'unchanged' };
    const waiting = queue.waiting();
    const { pending } = tabState();
    const taken = pending.slice(0, pending.length - waiting.length);
    const at = now();
    const next: PendingEdit = {
      label,
      at,
      changes: prepared.value,
      ...(noted.value.length === 0 ? {} : { entries: noted.value.map((entry) => provisional(entry, at)) }),
      ...more,
    };
    hold({ pending: [...taken, ...addPending(waiting, next)], takenBack: [] });
    if (next.coalesceKey === undefined) void queue.flush();
    else queue.flushSoon();
    return { state: 'shown' };
  };

  /** Counts beyond all that are given put it behind what this device wrote before. */
  const provisional = (entry: UncountedEntry, at: number): Entry => {
    waited += 1;
    return {
      ...entry,
      id: `${WAITING_ID}${waited}`,
      device: tabState().device?.id ?? WAITING_DEVICE,
      count: BEYOND_ALL + waited,
      at,
    };
  };

  /** A screen may still know an entry by the id it had while it waited. */
  const withRealId = (entry: NewEntry): NewEntry => withRealIds(entry, tabState().givenIds, kinds.entryKinds);

  const isKnown = (id: string): boolean =>
    tabState().entries.has(id) ||
    tabState().unreadableHappened.has(id) ||
    tabState().pending.some(({ entries = [] }) => entries.some((entry) => entry.id === id));

  return {
    edit: (label, edits, coalesceKey) =>
      take(label, edits, [], coalesceKey === undefined ? {} : { coalesceKey }),
    editWithFiles: (label, edits, files) => take(label, edits, [], { files }),
    note: (label, entries, edits = [], files = []) =>
      take(label, edits, entries, files.length === 0 ? {} : { files }),
    firstId: (id) => [...tabState().givenIds].find(([, given]) => given === id)?.[0] ?? id,
    withdraw: (label, paperId, why) => {
      if (!tabState().papers.has(paperId)) {
        return { state: 'refused', findings: [{ code: 'noSuchDocument', id: paperId }] };
      }
      const issuing = (core.inForce().issuing ?? []).filter(
        ({ body }) => isPlainObject(body) && body.paperId === paperId,
      );
      const reason = why === undefined ? {} : { why };
      const back = issuing.map(({ id }) => ({ kind: TAKE_BACK, body: { entryId: id, ...reason } }));
      // The kind is one of every store's, which the type of a store's own entries cannot say.
      return take(label, [], back as unknown as readonly NewEntry<Entries>[], {});
    },
  };
}

/** No device counts as far. */
const BEYOND_ALL = 2e9;
