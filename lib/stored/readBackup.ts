import { failed, ok, type Result } from '@/shared/result';
import { backupSchema, type Stored } from '@/shared/schemas/stored';
import { claimedName } from './claimedName';
import { fromBase64 } from './fromBase64';
import type { LeftRecords } from './leavingRecords';
import { readDocument } from './readDocument';
import { neededDocuments, type Registry } from './registry';
import type { StoredFile } from './storedFile';
import { type SchemaIssue, type StoredFinding, schemaIssues } from './storedFinding';

/** Why a file is no backup that can be brought back. */
export type BackupFinding =
  | { readonly code: 'notABackup'; readonly issues: readonly SchemaIssue[] }
  | {
      readonly code: 'sameIdTwice';
      readonly id: string;
      readonly kind: string;
      /** What the first of them is called; null where that cannot be made out. */
      readonly name: string | null;
    }
  /** A document that all others stand on is not in the file, or only as a deleted one. */
  | { readonly code: 'neededMissing'; readonly kind: string }
  /** The text of a file is not what was saved. */
  | { readonly code: 'fileDamaged'; readonly name: string }
  | {
      readonly code: 'documentUnreadable';
      readonly id: string;
      readonly name: string | null;
      readonly kind: string | null;
      readonly finding: StoredFinding;
    };

/** A backup whose every document has been parsed and brought up to the known version. */
interface ReadBackup extends LeftRecords {
  readonly documents: readonly Stored[];
  readonly unreadable: readonly unknown[];
  readonly files: readonly StoredFile[];
}

/**
 * Reads a backup file strictly: either all of it can be brought back or none.
 *
 * @param partly whether it may lack what everything else stands on
 * @returns the documents, or every `notABackup`, `sameIdTwice` and `documentUnreadable` found; a file that could
 *   be brought back but for what it lacks gives `neededMissing` alone
 */
export function readBackup(
  file: unknown,
  registry: Registry,
  { partly }: { readonly partly: boolean } = { partly: false },
): Result<ReadBackup, readonly BackupFinding[]> {
  const parsed = backupSchema.safeParse(file);
  if (!parsed.success) return failed([{ code: 'notABackup', issues: schemaIssues(parsed.error) }]);
  const readings = parsed.data.documents.map((raw) => readDocument(raw, registry));
  const files = parsed.data.files.map(({ id, name, base64 }) => ({ id, name, content: fromBase64(base64) }));
  const findings: readonly BackupFinding[] = [
    ...readings.flatMap((reading) =>
      reading.state === 'readable'
        ? []
        : reading.findings.map((finding) => ({
            code: 'documentUnreadable' as const,
            id: reading.id,
            name: claimedName(reading.raw),
            kind: reading.kind,
            finding,
          })),
    ),
    ...repeated(parsed.data.documents).map((document) => ({
      code: 'sameIdTwice' as const,
      id: document.id,
      kind: document.kind,
      name: claimedName(document),
    })),
    ...files.flatMap(({ name, content }) =>
      content === null ? [{ code: 'fileDamaged' as const, name }] : [],
    ),
  ];
  if (findings.length > 0) return failed(findings);
  const documents = readings.flatMap((reading) => (reading.state === 'readable' ? [reading.document] : []));
  const missing = neededDocuments(registry).filter(
    ({ id }) => !documents.some((document) => isLive(document, id)),
  );
  if (missing.length > 0 && !partly) {
    return failed(missing.map(({ kind }) => ({ code: 'neededMissing', kind })));
  }
  const left = readings.flatMap((reading) => (reading.state === 'readable' ? [reading.left] : []));
  return ok({
    documents,
    entries: left.flatMap((part) => part.entries),
    papers: left.flatMap((part) => part.papers),
    unreadable: parsed.data.unreadable,
    files: files.flatMap(({ content, ...file }) => (content === null ? [] : [{ ...file, content }])),
  });
}

const isLive = ({ id, deletedAt }: Stored, wanted: string): boolean =>
  id === wanted && deletedAt === undefined;

/** @returns the first of each that share an id. */
function repeated<Item extends { readonly id: string }>(items: readonly Item[]): readonly Item[] {
  const counts = new Map<string, number>();
  for (const { id } of items) counts.set(id, (counts.get(id) ?? 0) + 1);
  return [...new Map(items.toReversed().map((item) => [item.id, item])).values()].filter(
    ({ id }) => (counts.get(id) ?? 0) > 1,
  );
}
