import type { EntryToWrite } from '@/lib/stored/newEntries';
import type { PendingEdit } from '@/lib/stored/pendingEdits';
import { type EntryRegistry, entryOf } from '@/lib/stored/registry';
import type { Entry } from '@/shared/schemas/happened';
import { setIn } from '@/shared/setIn';
import type { TabState } from './tabState';

/**
 * What still waits once an edit is written, or may wait again by redo. Its entries have ids of their own now: what names
 * one of them names it by that.
 */
export function withGivenIds(
  { pending, takenBack, givenIds }: Pick<TabState, 'pending' | 'takenBack' | 'givenIds'>,
  edit: PendingEdit,
  written: readonly Entry[],
  entryKinds: EntryRegistry,
): Pick<TabState, 'pending' | 'takenBack' | 'givenIds'> {
  const waiting = pending.filter((other) => other !== edit);
  const given = (edit.entries ?? []).flatMap(({ id }, index) => {
    const now = written[index];
    return now === undefined ? [] : [[id, now.id] as const];
  });
  if (given.length === 0) return { pending: waiting, takenBack, givenIds };
  const ids = new Map([...givenIds, ...given]);
  return {
    pending: waiting.map((other) => renamed(other, ids, entryKinds)),
    takenBack: takenBack.map((other) => renamed(other, ids, entryKinds)),
    givenIds: ids,
  };
}

/** The entries of an edit as they are written: under ids of their own, or those they went into a copy under. */
export function entriesToWrite(
  { entries }: Pick<PendingEdit, 'entries'>,
  { wentOut }: Pick<TabState, 'wentOut'>,
): { readonly entries?: readonly EntryToWrite[] } {
  if (entries === undefined) return {};
  return {
    entries: entries.map((entry) => {
      const out = wentOut.get(entry.id);
      if (out === undefined) return entry;
      const { id, device, count, at } = out;
      return { kind: out.kind, version: out.version, body: out.body, knownAs: { id, device, count, at } };
    }),
  };
}

/** What names an entry that waited names it by the id it has now. */
export function withRealIds<Of extends Pick<Entry, 'kind' | 'body'>>(
  entry: Of,
  ids: ReadonlyMap<string, string>,
  entryKinds: EntryRegistry,
): Of {
  const links = entryOf(entryKinds, entry.kind)?.linksOf(entry.body) ?? [];
  let { body } = entry;
  for (const { to, id, path } of links) {
    const real = to === 'entry' ? ids.get(id) : undefined;
    if (real !== undefined) body = setIn(body, path, real);
  }
  return body === entry.body ? entry : { ...entry, body };
}

function renamed(
  edit: PendingEdit,
  ids: ReadonlyMap<string, string>,
  entryKinds: EntryRegistry,
): PendingEdit {
  if (edit.entries === undefined) return edit;
  const entries = edit.entries.map((entry) => withRealIds(entry, ids, entryKinds));
  return entries.every((entry, index) => entry === edit.entries?.[index]) ? edit : { ...edit, entries };
}
