import { type FieldPath, mergeValues } from '@/lib/merging/mergeValues';
import { sameValue } from '@/lib/merging/sameValue';
import type { DocumentChange, Snapshot } from './documentChange';

/** A document after a change, and the fields somebody else had meanwhile set otherwise. */
interface AppliedChange {
  readonly after: Snapshot;
  readonly conflicts: readonly FieldPath[];
}

/** What the kept document must still be able to be. */
interface ApplyRules {
  /** Whether a body can be read by its schema. */
  readonly fits: (body: unknown) => boolean;
  /** Whether a changed field brings back a document that was deleted meanwhile; typing does, undo does not. */
  readonly revives: boolean;
}

/**
 * Applies a change to a document that may have moved on since the change was made. Only what the change
 * changed is applied. Where both moved the same field, the change wins and the field is told. Where the two
 * together would not be a readable document, the change's own body is taken whole.
 *
 * @param current the document as kept now; null where nothing is kept under its id
 */
export function applyChange(
  { before, after }: Pick<DocumentChange, 'before' | 'after'>,
  current: Snapshot | null,
  { fits, revives }: ApplyRules,
): AppliedChange {
  if (current === null) return { after, conflicts: [] };
  if (before === null) {
    return { after, conflicts: sameValue(after.body, current.body) ? [] : [wholeDocument] };
  }
  const merged = mergeBodies(before.body, after.body, current.body, fits);
  const movesDeletion = before.deleted !== after.deleted;
  const edits = !sameValue(before.body, after.body);
  const revived = !movesDeletion && revives && edits && current.deleted && !after.deleted;
  return {
    after: {
      version: after.version,
      deleted: movesDeletion ? after.deleted : current.deleted && !revived,
      body: merged.value,
    },
    conflicts: revived ? [wholeDocument, ...merged.conflicts] : merged.conflicts,
  };
}

/** The path of the document itself. */
const wholeDocument: FieldPath = [];

function mergeBodies(base: unknown, mine: unknown, theirs: unknown, fits: ApplyRules['fits']) {
  const merged = mergeValues(base, mine, theirs);
  if (sameValue(merged.value, mine) || sameValue(merged.value, theirs) || fits(merged.value)) return merged;
  return { value: mine, conflicts: [wholeDocument] };
}
