import { isPlainObject } from '@/lib/merging/sameValue';
import { inForceAmong } from '@/lib/stored/entriesInForce';
import { type EntryOrder, emptyOrder, withEntries } from '@/lib/stored/entryOrder';
import type { Bodies, StoreKinds } from '@/lib/stored/registry';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { EntriesByKind, Happened, PapersByKind, ShownPaper } from './happenedState';
import { sameItems } from './sameItems';
import type { TabState } from './tabState';

/** What screens see of entries and papers. */
export interface HappenedView<Papers extends Bodies, Entries extends Bodies> {
  readonly entries: EntriesByKind<Entries>;
  readonly papers: PapersByKind<Papers>;
  readonly happened: Happened<Papers, Entries>;
  /** What the clock said at the latest entry of this device; null where it wrote none. */
  readonly lastOwnAt: number | null;
}

/** @returns how entries and papers look to the screens: what did not change stays the same object. */
export function happenedViewer<Papers extends Bodies, Entries extends Bodies>({
  paperKinds,
  entryKinds,
}: Omit<StoreKinds, 'registry'>): (tabState: TabState) => HappenedView<Papers, Entries> {
  let seen: Pick<TabState, 'entries' | 'papers' | 'device'> | null = null;
  let waiting: readonly Entry[] = [];
  let entries: Readonly<Record<string, readonly Entry[]>> = {};
  let papers: Readonly<Record<string, readonly ShownPaper[]>> = {};
  let happened: readonly (Entry | ShownPaper)[] = [];
  let order: EntryOrder<Entry | Paper> = emptyOrder;
  let view: HappenedView<Papers, Entries> | null = null;
  return (tabState) => {
    const pending = sameItems(
      waiting,
      tabState.pending.flatMap((edit) => edit.entries ?? []),
    );
    const isSame =
      view !== null &&
      pending === waiting &&
      seen?.entries === tabState.entries &&
      seen.papers === tabState.papers &&
      seen.device === tabState.device;
    if (isSame && view !== null) return view;
    if (seen?.entries !== tabState.entries || seen.papers !== tabState.papers)
      order = orderOf(order, tabState, seen);
    const all = withEntries(order, pending).entries;
    const noted = all.filter((one) => !isPaper(one));
    const inForce = inForceAmong(noted);
    entries = byKind(Object.keys(entryKinds), inForce, entries);
    const shown = shownPapers(all.filter(isPaper), inForce, papers);
    papers = byKind(Object.keys(paperKinds), shown, papers);
    happened = sameItems(happened, together(all, inForce, shown));
    [seen, waiting] = [tabState, pending];
    // One list for each kind, which the type of entries cannot say.
    view = {
      entries,
      papers,
      happened,
      lastOwnAt: latestOf(noted, tabState.device?.id),
    } as unknown as HappenedView<Papers, Entries>;
    return view;
  };
}

// Helpers

type Kept = Pick<TabState, 'entries' | 'papers'>;

/** Nearly always a few entries came to thousands that are in order already. */
function orderOf(
  before: EntryOrder<Entry | Paper>,
  { entries, papers }: Kept,
  seen: Kept | null,
): EntryOrder<Entry | Paper> {
  const all = [...entries.values(), ...papers.values()];
  const fresh = all.filter((one) => seen?.entries.get(one.id) !== one && seen?.papers.get(one.id) !== one);
  const known = (seen?.entries.size ?? 0) + (seen?.papers.size ?? 0);
  return fresh.length + known === all.length ? withEntries(before, fresh) : withEntries(emptyOrder, all);
}

const isPaper = (one: Entry | Paper): one is Paper => 'series' in one;

/** @returns all without what does not count, papers as they are shown. */
function together(
  all: readonly (Entry | Paper)[],
  inForce: readonly Entry[],
  shown: readonly ShownPaper[],
): readonly (Entry | ShownPaper)[] {
  const counting = new Map<string, Entry | ShownPaper>();
  for (const one of [...inForce, ...shown]) counting.set(one.id, one);
  return all.flatMap(({ id }) => counting.get(id) ?? []);
}

function byKind<Item extends { readonly kind: string }>(
  kinds: readonly string[],
  items: readonly Item[],
  before: Readonly<Record<string, readonly Item[]>>,
): Readonly<Record<string, readonly Item[]>> {
  const lists: Record<string, Item[]> = Object.fromEntries(kinds.map((kind) => [kind, []]));
  for (const item of items) lists[item.kind]?.push(item);
  const now = Object.fromEntries(
    Object.entries(lists).map(([kind, list]) => [kind, sameItems(before[kind], list)] as const),
  );
  return kinds.every((kind) => now[kind] === before[kind]) ? before : now;
}

function shownPapers(
  kept: readonly Paper[],
  inForce: readonly Entry[],
  before: Readonly<Record<string, readonly ShownPaper[]>>,
): readonly ShownPaper[] {
  const issued = new Set(
    inForce.flatMap(({ kind, body }) => (kind === 'issuing' && isPlainObject(body) ? [body.paperId] : [])),
  );
  const known = new Map(
    Object.values(before)
      .flat()
      .map((paper) => [paper.id, paper]),
  );
  return kept.map((paper) => {
    const withdrawn = !issued.has(paper.id);
    const same = known.get(paper.id);
    return same?.withdrawn === withdrawn ? same : { ...paper, withdrawn };
  });
}

const latestOf = (entries: readonly Entry[], device: string | undefined): number | null =>
  entries.reduce<number | null>(
    (latest, entry) => (entry.device === device && entry.at > (latest ?? -1) ? entry.at : latest),
    null,
  );
