import { entryOf, neededDocuments, type StoreKinds } from '@/lib/stored/registry';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { Stored } from '@/shared/schemas/stored';

/** What there is to carry from. */
interface Carriable {
  readonly drafts: ReadonlyMap<string, Stored>;
  readonly papers: readonly Paper[];
  readonly entries: readonly Entry[];
}
interface Carried {
  readonly drafts: readonly Stored[];
  readonly papers: readonly Paper[];
  readonly entries: readonly Entry[];
}

/**
 * A draft with all that hangs on it: what it names, and what that names; what all drafts stand on; the papers that were
 * made of any of these or are named by one, and the entries that are about any of them. Which these are only the descriptors of the kinds
 * say, so that a new kind comes along without a word here.
 *
 * @returns nothing where there is no such draft, or it was removed
 */
export function carriedWith(
  { kind, id }: { readonly kind: string; readonly id: string },
  from: Carriable,
  kinds: StoreKinds,
): Carried {
  const drafts = namedBy([{ to: kind, id }], from.drafts, kinds);
  if (drafts.size === 0) return { drafts: [], papers: [], entries: [] };
  for (const needed of neededDocuments(kinds.registry)) {
    for (const [key, draft] of namedBy([{ to: needed.kind, id: needed.id }], from.drafts, kinds))
      drafts.set(key, draft);
  }
  const named = new Set([...drafts.values()].flatMap((draft) => papersNamedBy(draft, kinds)));
  const papers = from.papers.filter((paper) => drafts.has(paper.about.id) || named.has(paper.id));
  const carried = new Set([
    // Of the workshop there is one; what happened in it is not about this draft.
    ...[...drafts.values()]
      .filter((draft) => entryOf(kinds.registry, draft.kind)?.needed !== draft.id)
      .map((draft) => keyOf(draft.kind, draft.id)),
    ...papers.map((paper) => keyOf('paper', paper.id)),
  ]);
  return { drafts: [...drafts.values()], papers, entries: entriesAbout(carried, from.entries, kinds) };
}

// Helpers

interface Named {
  readonly to: string;
  readonly id: string;
}

const keyOf = (kind: string, id: string): string => `${kind} ${id}`;

function namedBy(
  first: readonly Named[],
  drafts: ReadonlyMap<string, Stored>,
  { registry }: StoreKinds,
): Map<string, Stored> {
  const found = new Map<string, Stored>();
  const waiting = [...first];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const draft = drafts.get(next.id);
    if (draft === undefined || draft.kind !== next.to || draft.deletedAt !== undefined || found.has(draft.id))
      continue;
    found.set(draft.id, draft);
    const links = entryOf(registry, draft.kind)?.linksOf(draft.body) ?? [];
    waiting.push(...links.filter(({ isApart = false }) => !isApart));
  }
  return found;
}

/** Such as the version of a price list that an order is priced by: it goes along, and the list does not. */
const papersNamedBy = (draft: Stored, { registry }: StoreKinds): readonly string[] =>
  (entryOf(registry, draft.kind)?.linksOf(draft.body) ?? []).flatMap(({ to, id }) =>
    to === 'paper' ? [id] : [],
  );

/** With the entries that take back one of these. */
function entriesAbout(
  things: Set<string>,
  entries: readonly Entry[],
  { entryKinds }: StoreKinds,
): readonly Entry[] {
  const about = new Set<Entry>();
  for (let more = true; more; ) {
    more = false;
    for (const entry of entries) {
      const links = entryOf(entryKinds, entry.kind)?.linksOf(entry.body) ?? [];
      if (about.has(entry) || !links.some(({ to, id }) => things.has(keyOf(to, id)))) continue;
      about.add(entry);
      things.add(keyOf('entry', entry.id));
      more = true;
    }
  }
  return entries.filter((entry) => about.has(entry));
}
