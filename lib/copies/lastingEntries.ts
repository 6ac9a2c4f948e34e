import { isPlainObject } from '@/lib/merging/sameValue';
import { TAKE_BACK } from '@/lib/stored/takeBack';
import type { Entry } from '@/shared/schemas/happened';
import { hashOfJson } from './exchanged';

/** As long as the name of a device that something left a document under. */
const DEVICE_DIGITS = 20;

/**
 * Entries that could not be written yet, under ids made of what they say: those they wait under hold only in one tab,
 * and in a copy they would meet others.
 *
 * @param before those that went out in an earlier copy, by the ids they wait under; they stay as they are
 * @returns all of them, by the ids they wait under
 */
export function lastingEntries(
  waiting: readonly Entry[],
  before: ReadonlyMap<string, Entry>,
): ReadonlyMap<string, Entry> {
  const lasting = new Map(before);
  for (const entry of waiting) {
    if (lasting.has(entry.id)) continue;
    const body = relinked(entry, lasting);
    const device = hashOfJson({ kind: entry.kind, at: entry.at, body, id: entry.id }).slice(0, DEVICE_DIGITS);
    lasting.set(entry.id, { ...entry, id: `${device}-1`, device, count: 1, body });
  }
  return lasting;
}

function relinked({ kind, body }: Entry, lasting: ReadonlyMap<string, Entry>): unknown {
  if (kind !== TAKE_BACK || !isPlainObject(body) || typeof body.entryId !== 'string') return body;
  return { ...body, entryId: lasting.get(body.entryId)?.id ?? body.entryId };
}
