import { type Entry, entrySchema } from '@/shared/schemas/happened';
import { keptBeside } from './asKept';
import { readBody } from './readBody';
import { claimsOf, type UnreadableRecord } from './readDocument';
import { type EntryRegistry, entryOf } from './registry';
import { type StoredFinding, schemaIssues } from './storedFinding';

type EntryReading = { readonly state: 'readable'; readonly entry: Entry } | UnreadableRecord;

/** Reads one kept entry: its wrapping, then its body, brought up to the known version by its kind. */
export function readEntry(raw: unknown, entryKinds: EntryRegistry): EntryReading {
  const claimed = claimsOf(raw);
  const unreadable = (finding: StoredFinding): UnreadableRecord => ({
    state: 'unreadable',
    ...claimed,
    raw,
    findings: [finding],
  });
  const kind = claimed.kind === null ? undefined : entryOf(entryKinds, claimed.kind);
  if (claimed.kind !== null && kind === undefined) {
    return unreadable({ code: 'unknownKind', kind: claimed.kind });
  }
  const envelope = entrySchema.safeParse(raw);
  if (!envelope.success || kind === undefined)
    return unreadable({ code: 'notADocument', issues: envelope.success ? [] : schemaIssues(envelope.error) });
  const body = readBody(envelope.data.body, envelope.data.version, kind);
  if (!body.ok) return unreadable(body.problem);
  const kept = keptBeside(envelope.data, kind.version);
  return {
    state: 'readable',
    entry: { ...envelope.data, version: kind.version, body: body.value, ...kept },
  };
}
