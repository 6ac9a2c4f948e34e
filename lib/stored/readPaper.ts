import { type Paper, paperSchema } from '@/shared/schemas/happened';
import { keptBeside } from './asKept';
import { isPaperSound } from './isPaperSound';
import { readBody } from './readBody';
import { claimsOf, type UnreadableRecord } from './readDocument';
import { entryOf, type PaperRegistry } from './registry';
import { type StoredFinding, schemaIssues } from './storedFinding';

type PaperReading = { readonly state: 'readable'; readonly paper: Paper } | UnreadableRecord;

/**
 * Reads one kept paper: its wrapping, whether it is still what went out, then its body, brought up to the known version
 * by its kind.
 */
export function readPaper(raw: unknown, paperKinds: PaperRegistry): PaperReading {
  const claimed = claimsOf(raw);
  const unreadable = (finding: StoredFinding): UnreadableRecord => ({
    state: 'unreadable',
    ...claimed,
    raw,
    findings: [finding],
  });
  const kind = claimed.kind === null ? undefined : entryOf(paperKinds, claimed.kind);
  if (claimed.kind !== null && kind === undefined) {
    return unreadable({ code: 'unknownKind', kind: claimed.kind });
  }
  const envelope = paperSchema.safeParse(raw);
  if (!envelope.success || kind === undefined)
    return unreadable({ code: 'notADocument', issues: envelope.success ? [] : schemaIssues(envelope.error) });
  if (!isPaperSound(raw)) return unreadable({ code: 'paperDamaged' });
  const body = readBody(envelope.data.body, envelope.data.version, kind);
  if (!body.ok) return unreadable(body.problem);
  const kept = keptBeside(envelope.data, kind.version);
  return {
    state: 'readable',
    paper: { ...envelope.data, version: kind.version, body: body.value, ...kept },
  };
}
