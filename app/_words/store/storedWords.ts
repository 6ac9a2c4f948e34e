import { fieldWords } from '@/app/_words/fieldWords';
import { type DocumentKind, draftFacts } from '@/lib/kinds/draftFacts';
import { entryFacts } from '@/lib/kinds/entryFacts';
import { paperFacts } from '@/lib/kinds/paperFacts';
import type { SchemaIssue, StoredFinding } from '@/lib/stored/storedFinding';

/** @returns what a kept record claims to be, such as “job”. */
export function kindWords(kind: string | null): string {
  const known: Readonly<Record<string, { readonly word: string }>> = {
    ...draftFacts,
    ...paperFacts,
    ...entryFacts,
  };
  return (kind === null ? undefined : known[kind]?.word) ?? 'record';
}

/**
 * @param kind what the record claims to be, so that its fields can be named; null where it claims nothing known
 * @returns why a kept record cannot be read, and what becomes of it
 */
export function storedWords(finding: StoredFinding, kind: DocumentKind | null): string {
  switch (finding.code) {
    case 'notADocument':
      return 'It does not have the form of a record: a part of its wrapping is missing or was changed.';
    case 'unknownKind':
      return `It is a “${finding.kind}”, which this version does not know. A newer version of the app wrote it.`;
    case 'newerVersion':
      return 'A newer version of the app wrote it. Reload the page to get that version.';
    case 'stepMissing':
    case 'stepFailed':
      return `It was written by an early version of the app (${finding.fromVersion}) and cannot be brought up to date.`;
    case 'paperDamaged':
      return 'It is no longer what went out: its text was changed or damaged since. It is kept as it was found.';
    case 'numberTaken':
      return 'It came with a number that is taken here, as from a copied browser profile. It does not count, and is kept as it came.';
    case 'bodyInvalid':
      return `Something in it is not what it can be${issueWords(finding.issues, kind)}.`;
    default:
      return finding satisfies never;
  }
}

// Helpers

/** The first field that is refused, in words, and how many more there are. */
function issueWords(issues: readonly SchemaIssue[], kind: DocumentKind | null): string {
  const [first, ...more] = issues;
  if (first === undefined || kind === null) return '';
  const others = more.length === 0 ? '' : `, and ${more.length} more`;
  return `: ${fieldWords({ document: kind, path: first.path })}${others}`;
}
