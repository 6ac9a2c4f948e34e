import { isPlainObject } from '@/lib/stored/sameValue';
import { TAKE_BACK } from '@/lib/stored/takeBack';
import type { Entry } from '@/shared/schemas/happened';
import { hashOfJson } from './exchanged';

/** As long as the name of a device that something left a document under. */
const DEVICE_DIGITS = 20;

/**
 * Entries that could not be written yet, under ids made of what they say: those they wait under hold only in one tab,
 * and in a copy they would meet others.
 */
export function lastingEntries(waiting: readonly Entry[]): readonly Entry[] {
  const ids = new Map<string, string>();
  return waiting.map((entry) => {
    const body = relinked(entry, ids);
    const device = hashOfJson({ kind: entry.kind, at: entry.at, body, id: entry.id }).slice(0, DEVICE_DIGITS);
    const id = `${device}-1`;
    ids.set(entry.id, id);
    return { ...entry, id, device, count: 1, body };
  });
}

function relinked({ kind, body }: Entry, ids: ReadonlyMap<string, string>): unknown {
  if (kind !== TAKE_BACK || !isPlainObject(body) || typeof body.entryId !== 'string') return body;
  return { ...body, entryId: ids.get(body.entryId) ?? body.entryId };
}
