import { nextRedo, nextUndo } from '@/lib/stored/history';
import type { AnyDocument, Bodies, Registry } from '@/lib/stored/registry';
import type { Stored } from '@/shared/schemas/stored';
import type { ClockBehind, DocumentsState } from './documentsState';
import type { HappenedView } from './happenedView';
import { kindsOf } from './kindsOf';
import { sameItems } from './sameItems';
import type { TabState } from './tabState';

interface ViewOptions<Kinds extends Bodies> {
  readonly registry: Registry<Kinds>;
  readonly tab: string;
  readonly now: number;
}

/** @returns what the screens get. */
export function viewOf<Kinds extends Bodies, Papers extends Bodies, Entries extends Bodies>(
  tabState: TabState,
  shown: ReadonlyMap<string, Stored>,
  { entries, papers, happened, lastOwnAt }: HappenedView<Papers, Entries>,
  { registry, tab, now }: ViewOptions<Kinds>,
  before: DocumentsState<Kinds, Papers, Entries> | null,
): DocumentsState<Kinds, Papers, Entries> {
  const all = [...shown.values()].toSorted((one, other) => (one.id < other.id ? -1 : 1));
  const live = all.filter(({ deletedAt }) => deletedAt === undefined);
  const removed = all.filter(({ deletedAt }) => deletedAt !== undefined);
  const documents = sameItems(before?.documents, live as unknown as readonly AnyDocument<Kinds>[]);
  const unreadable = [
    ...tabState.unreadable.values(),
    ...tabState.unreadableHappened.values(),
    ...tabState.aside,
  ];
  const waits = tabState.pending.length > 0;
  const undoLabel = tabState.pending.at(-1)?.label ?? nextUndo(tabState.steps, tab)?.label ?? null;
  const redoLabel =
    tabState.takenBack.at(-1)?.label ?? (waits ? null : (nextRedo(tabState.steps, tab)?.label ?? null));
  return {
    ...tabState.status,
    documents,
    kinds: kindsOf(registry, before?.kinds ?? null, documents),
    removed: sameItems(before?.removed, removed as unknown as readonly AnyDocument<Kinds>[]),
    entries,
    papers,
    happened,
    device: tabState.device,
    lastCopyAt: tabState.lastCopy?.at ?? null,
    copiedUpTo: tabState.lastCopy?.upTo ?? null,
    clockBehind: clockBehind(now, lastOwnAt, before?.clockBehind ?? null),
    unreadable: sameItems(before?.unreadable, unreadable),
    kept: tabState.kept,
    undoLabel,
    redoLabel,
    canUndo: undoLabel !== null,
    canRedo: redoLabel !== null,
    overwritten: tabState.overwritten,
    lostStore: tabState.lostStore,
  };
}

// Helpers

/** Clocks are set by a few seconds all the time; that moves no day. */
const CLOCK_SLACK_MS = 60_000;

function clockBehind(now: number, lastEntry: number | null, before: ClockBehind | null): ClockBehind | null {
  if (lastEntry === null || lastEntry - now <= CLOCK_SLACK_MS) return null;
  // Told once with the clock as it was found: screens compare by identity.
  return before?.lastEntry === lastEntry ? before : { deviceClock: now, lastEntry };
}
