import { sameValue } from '@/lib/merging/sameValue';
import { failed, ok, type Result } from '@/shared/result';
import type { Stored } from '@/shared/schemas/stored';
import { type DocumentChange, type Snapshot, snapshotOf } from './documentChange';
import { type Bodies, entryOf, type Registry } from './registry';
import { type SchemaIssue, schemaIssues } from './storedFinding';

/** One thing done to one document. */
export type Edit<Kinds extends Bodies = Bodies> = {
  [Kind in keyof Kinds & string]:
    | { readonly do: 'add'; readonly kind: Kind; readonly id: string; readonly body: Kinds[Kind] }
    // A method, so that an edit of a known kind can be handed on as an edit of any.
    | { readonly do: 'change'; readonly kind: Kind; readonly id: string; to(body: Kinds[Kind]): Kinds[Kind] }
    | { readonly do: 'delete'; readonly kind: Kind; readonly id: string }
    /** Brings a deleted document back as it was. */
    | { readonly do: 'restore'; readonly kind: Kind; readonly id: string };
}[keyof Kinds & string];

/** Why an edit was not taken up; then nothing of it is. */
export type EditFinding =
  | { readonly code: 'noSuchDocument'; readonly id: string }
  | { readonly code: 'idTaken'; readonly id: string }
  /** The document would no longer be readable. */
  | { readonly code: 'bodyInvalid'; readonly id: string; readonly issues: readonly SchemaIssue[] };

/**
 * Works out what an edit changes, parsed by the schema of each kind.
 *
 * @param shown the documents as the maker sees them, tombstones included
 * @returns the changed documents, none where the edit changes nothing; or every finding
 */
export function prepareEdit(
  edits: readonly Edit[],
  shown: ReadonlyMap<string, Stored>,
  registry: Registry,
): Result<readonly DocumentChange[], readonly EditFinding[]> {
  const changes = new Map<string, DocumentChange>();
  const findings: EditFinding[] = [];
  for (const edit of edits) {
    const { id, kind } = edit;
    const found = shown.get(id);
    const first = found === undefined ? null : snapshotOf(found);
    const earlier = changes.get(id);
    const current = earlier?.after ?? first;
    const wrongKind = found !== undefined && found.kind !== kind;
    const after = wrongKind
      ? failed<EditFinding>({ code: 'noSuchDocument', id })
      : afterEdit(edit, current, registry);
    if (after.ok) changes.set(id, { id, kind, before: first, after: after.value });
    else findings.push(after.problem);
  }
  if (findings.length > 0) return failed(findings);
  return ok([...changes.values()].filter(({ before, after }) => !sameValue(before, after)));
}

function afterEdit(edit: Edit, current: Snapshot | null, registry: Registry): Result<Snapshot, EditFinding> {
  const { id } = edit;
  const live = current !== null && !current.deleted ? current : null;
  if (edit.do === 'add') {
    return current === null ? parsed(edit, edit.body, registry) : failed({ code: 'idTaken', id });
  }
  if (edit.do === 'restore' && current !== null) return ok({ ...current, deleted: false });
  if (live === null || edit.do === 'restore') return failed({ code: 'noSuchDocument', id });
  if (edit.do === 'delete') return ok({ ...live, deleted: true });
  return parsed(edit, edit.to(live.body), registry);
}

function parsed({ id, kind }: Edit, body: unknown, registry: Registry): Result<Snapshot, EditFinding> {
  const entry = entryOf(registry, kind);
  if (entry === undefined) return failed({ code: 'noSuchDocument', id });
  const { schema, version } = entry;
  const outcome = schema.safeParse(body);
  return outcome.success
    ? ok({ version, deleted: false, body: outcome.data })
    : failed({ code: 'bodyInvalid', id, issues: schemaIssues(outcome.error) });
}
