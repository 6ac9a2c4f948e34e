import type { ZodType } from 'zod';
import type { KindReading } from './registry';
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

/** A record whose wrapping was read; its body is not looked at yet. */
interface OpenedRecord<Envelope> {
  readonly state: 'opened';
  readonly envelope: Envelope;
  readonly kind: KindReading<unknown>;
  /** The record as one whose body cannot be read after all. */
  readonly unreadable: (finding: StoredFinding) => UnreadableRecord;
}

/** Reads the wrapping of a kept record, whatever its nature, and finds how its kind is read. */
export function openRecord<Envelope>(
  raw: unknown,
  envelopeSchema: ZodType<Envelope>,
  kindOf: (kind: string) => KindReading<unknown> | undefined,
): OpenedRecord<Envelope> | UnreadableRecord {
  const claimed = claimsOf(raw);
  const unreadable = (finding: StoredFinding): UnreadableRecord => ({
    state: 'unreadable',
    ...claimed,
    raw,
    findings: [finding],
  });
  const kind = claimed.kind === null ? undefined : kindOf(claimed.kind);
  if (claimed.kind !== null && kind === undefined) {
    return unreadable({ code: 'unknownKind', kind: claimed.kind });
  }
  const envelope = envelopeSchema.safeParse(raw);
  if (!envelope.success || kind === undefined)
    return unreadable({ code: 'notADocument', issues: envelope.success ? [] : schemaIssues(envelope.error) });
  return { state: 'opened', envelope: envelope.data, kind, unreadable };
}

/** @returns what a record says it is, as far as that can be made out. */
export function claimsOf(raw: unknown): { readonly id: string; readonly kind: string | null } {
  if (typeof raw !== 'object' || raw === null) return { id: '', kind: null };
  return {
    id: 'id' in raw ? claimedId(raw.id) : '',
    kind: 'kind' in raw && typeof raw.kind === 'string' ? raw.kind : null,
  };
}

// Helpers

/** An id that is no text as it stands in the file, shortened, for a person is to find the record by it. */
function claimedId(id: unknown): string {
  const text = typeof id === 'string' ? id : (JSON.stringify(id) ?? '');
  return typeof id === 'string' || text.length <= ID_SHOWN ? text : `${text.slice(0, ID_SHOWN)}…`;
}

const ID_SHOWN = 60;
