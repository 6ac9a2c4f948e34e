import { isPlainObject } from '@/lib/merging/sameValue';
import { snapshotOf } from '@/lib/stored/documentChange';
import { bodyFits, entryOf, neededDocuments, type Registry } from '@/lib/stored/registry';
import type { Arrival, ArrivalPlan } from './arrival';

type Drafts = Arrival['drafts'];

/**
 * Adds to what all others stand on here the parts that arriving drafts name and it lacks, such as a printer, as they
 * are where the drafts come from. What is here under the same id stays as it is.
 */
export function withNamedParts(drafts: Drafts, { meetings, here }: ArrivalPlan, registry: Registry): Drafts {
  return neededDocuments(registry).reduce<Drafts>((all, { kind, id }) => {
    const theirs = meetings.find((meeting) => meeting.id === id)?.theirs;
    const coming = all.find((draft) => draft.id === id);
    const kept = here.drafts.get(id);
    const mine = coming?.snapshot ?? (kept === undefined ? null : snapshotOf(kept));
    if (theirs === undefined || mine === null) return all;
    const named = new Set(
      all.flatMap((draft) =>
        (entryOf(registry, draft.kind)?.linksOf(draft.snapshot.body) ?? []).map((link) => link.id),
      ),
    );
    const body = withParts(mine.body, theirs.body, named);
    if (body === mine.body || !bodyFits(registry, kind, body)) return all;
    return [...all.filter((draft) => draft !== coming), { id, kind, snapshot: { ...mine, body } }];
  }, drafts);
}

// Helpers

function withParts(mine: unknown, theirs: unknown, named: ReadonlySet<string>): unknown {
  if (!isPlainObject(mine) || !isPlainObject(theirs)) return mine;
  const added = Object.entries(theirs).flatMap(([key, list]) => {
    const own = mine[key];
    if (!Array.isArray(own) || !Array.isArray(list)) return [];
    const lacking = list.filter(
      (part: unknown) => named.has(idOf(part) ?? '') && !own.some((other) => idOf(other) === idOf(part)),
    );
    return lacking.length === 0 ? [] : [[key, [...own, ...lacking]] as const];
  });
  return added.length === 0 ? mine : { ...mine, ...Object.fromEntries(added) };
}

const idOf = (part: unknown): string | null =>
  isPlainObject(part) && typeof part.id === 'string' ? part.id : null;
