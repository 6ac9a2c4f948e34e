import { type Stored, storedSchema } from '@/shared/schemas/stored';
import type { Leaving } from './leaving';
import { type LeftRecords, leavingRecords, nothingLeft } from './leavingRecords';
import { openRecord, type UnreadableRecord } from './openRecord';
import { readBody } from './readBody';
import { entryOf, type Registry } from './registry';

/** What reading one record gave. */
type DocumentReading =
  | {
      readonly state: 'readable';
      readonly document: Stored;
      /** What a record of an earlier version holds that is kept by itself now; it counts as well. */
      readonly left: LeftRecords;
    }
  | UnreadableRecord;

/**
 * Reads one kept record: its wrapping, then its body, migrated and parsed by the schema of its kind.
 * The document that comes out has the registry's version; its revision is still the kept one.
 */
export function readDocument(raw: unknown, registry: Registry): DocumentReading {
  const opened = openRecord(raw, storedSchema, (name) => entryOf(registry, name));
  if (opened.state === 'unreadable') return opened;
  const { id, kind, updatedAt, version, body: written } = opened.envelope;
  const leaving: Leaving[] = [];
  const body = readBody(written, version, opened.kind, (parting, before) => {
    leaving.push(parting(before, { id, at: updatedAt }));
  });
  if (!body.ok) return opened.unreadable(body.problem);
  return {
    state: 'readable',
    document: { ...opened.envelope, version: opened.kind.version, body: body.value },
    left: leaving.length === 0 ? nothingLeft : leavingRecords({ kind, id }, leaving),
  };
}
