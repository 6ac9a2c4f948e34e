import { type Stored, storedSchema } from '@/shared/schemas/stored';
import type { Leaving } from './leaving';
import { type LeftRecords, leavingRecords, nothingLeft } from './leavingRecords';
import { readBody } from './readBody';
import { entryOf, type Registry } from './registry';
import { type StoredFinding, schemaIssues } from './storedFinding';

/** A record that is kept as it was found, because nothing here can read it. */
export interface UnreadableRecord {
  readonly state: 'unreadable';
  readonly id: string;
  /** The kind it claims to be; null where it claims none. */
  readonly kind: string | null;
  readonly raw: unknown;
  readonly findings: readonly StoredFinding[];
}

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
  const claimed = claimsOf(raw);
  const unreadable = (finding: StoredFinding): UnreadableRecord => ({
    state: 'unreadable',
    ...claimed,
    raw,
    findings: [finding],
  });
  const entry = claimed.kind === null ? undefined : entryOf(registry, claimed.kind);
  if (claimed.kind !== null && entry === undefined) {
    return unreadable({ code: 'unknownKind', kind: claimed.kind });
  }
  const envelope = storedSchema.safeParse(raw);
  if (!envelope.success || entry === undefined)
    return unreadable({ code: 'notADocument', issues: envelope.success ? [] : schemaIssues(envelope.error) });
  const { id, kind, updatedAt, version } = envelope.data;
  const leaving: Leaving[] = [];
  const body = readBody(envelope.data.body, version, entry, (parting, before) => {
    leaving.push(parting(before, { id, at: updatedAt }));
  });
  if (!body.ok) return unreadable(body.problem);
  return {
    state: 'readable',
    document: { ...envelope.data, version: entry.version, body: body.value },
    left: leaving.length === 0 ? nothingLeft : leavingRecords({ kind, id }, leaving),
  };
}

/** @returns what a record says it is, as far as that can be made out. */
export function claimsOf(raw: unknown): { readonly id: string; readonly kind: string | null } {
  if (typeof raw !== 'object' || raw === null) return { id: '', kind: null };
  const id = 'id' in raw ? String(raw.id) : '';
  return { id, kind: 'kind' in raw && typeof raw.kind === 'string' ? raw.kind : null };
}
