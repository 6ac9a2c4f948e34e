import { failed, ok, type Result } from '@/shared/result';
import type { Entry } from '@/shared/schemas/happened';
import type { EditFinding } from './prepareEdit';
import { type Bodies, type EntryRegistry, entryOf } from './registry';
import { schemaIssues } from './storedFinding';
import { takenBy } from './takeBack';

/** Something that happened, before it is written. */
export type NewEntry<Entries extends Bodies = Bodies> = {
  [Kind in keyof Entries & string]: { readonly kind: Kind; readonly body: Entries[Kind] };
}[keyof Entries & string];

/** An entry ready to be written: its id, device and count come with the write. */
export type UncountedEntry = Pick<Entry, 'kind' | 'version' | 'body'>;

/** The same, or one that is known elsewhere already under the id it is to be written under. */
export type EntryToWrite = UncountedEntry & {
  readonly knownAs?: Pick<Entry, 'id' | 'device' | 'count' | 'at'>;
};

/**
 * Parses entries by the schema of each kind.
 *
 * @param knows whether an entry is there under an id, so that none takes back what nobody wrote
 * @returns the entries, or every finding
 */
export function prepareEntries(
  entries: readonly NewEntry[],
  entryKinds: EntryRegistry,
  knows: (id: string) => boolean,
): Result<readonly UncountedEntry[], readonly EditFinding[]> {
  const findings: EditFinding[] = [];
  const prepared = entries.flatMap(({ kind, body }): readonly UncountedEntry[] => {
    const outcome = entryOf(entryKinds, kind)?.schema.safeParse(body);
    if (outcome === undefined) findings.push({ code: 'noSuchDocument', id: kind });
    else if (!outcome.success)
      findings.push({ code: 'bodyInvalid', id: kind, issues: schemaIssues(outcome.error) });
    else {
      const taken = takenBy({ kind, body: outcome.data });
      if (taken === null || knows(taken)) {
        return [{ kind, version: entryOf(entryKinds, kind)?.version ?? 1, body: outcome.data }];
      }
      findings.push({ code: 'noSuchDocument', id: taken });
    }
    return [];
  });
  return findings.length > 0 ? failed(findings) : ok(prepared);
}
