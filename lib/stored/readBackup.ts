import { failed, ok, type Result } from '@/shared/result';
import { backupSchema, type Stored } from '@/shared/schemas/stored';
import { fromBase64 } from './fromBase64';
import { readDocument } from './readDocument';
import type { Registry } from './registry';
import type { StoredFile } from './storedFile';
import { type SchemaIssue, type StoredFinding, schemaIssues } from './storedFinding';

/** Why a file is no backup that can be brought back. */
export type BackupFinding =
  | { readonly code: 'notABackup'; readonly issues: readonly SchemaIssue[] }
  | { readonly code: 'sameIdTwice'; readonly id: string }
  /** The text of a file is not what was saved. */
  | { readonly code: 'fileDamaged'; readonly name: string }
  | {
      readonly code: 'documentUnreadable';
      readonly id: string;
      readonly kind: string | null;
      readonly finding: StoredFinding;
    };

/** A backup whose every document has been parsed and brought up to the known version. */
export type ReadBackup = {
  readonly documents: readonly Stored[];
  readonly unreadable: readonly unknown[];
  readonly files: readonly StoredFile[];
};

/**
 * Reads a backup file strictly: either all of it can be brought back or none.
 *
 * @returns the documents, or every `notABackup`, `sameIdTwice` and `documentUnreadable` found
 */
export const readBackup = (
  file: unknown,
  registry: Registry,
): Result<ReadBackup, readonly BackupFinding[]> => {
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
            kind: reading.kind,
            finding,
          })),
    ),
    ...repeated(parsed.data.documents.map(({ id }) => id)).map((id) => ({
      code: 'sameIdTwice' as const,
      id,
    })),
    ...files.flatMap(({ name, content }) =>
      content === null ? [{ code: 'fileDamaged' as const, name }] : [],
    ),
  ];
  if (findings.length > 0) return failed(findings);
  const documents = readings.flatMap((reading) => (reading.state === 'readable' ? [reading.document] : []));
  return ok({
    documents,
    unreadable: parsed.data.unreadable,
    files: files.flatMap(({ content, ...file }) => (content === null ? [] : [{ ...file, content }])),
  });
};

const repeated = (ids: readonly string[]): readonly string[] => [
  ...new Set(ids.filter((id, index) => ids.indexOf(id) !== index)),
];
