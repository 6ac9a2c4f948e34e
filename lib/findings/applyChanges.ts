import type { Change } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import { type FieldPath, NoSuchField, setIn } from '@/shared/setIn';

/** A change that points at something that is not there is a fault of the rule that made it. */
export class ChangeLeadsNowhere extends Error {
  override readonly name = 'ChangeLeadsNowhere';
  constructor(change: Change) {
    super(`${change.document} has nothing at ${change.path.join('.')}`);
  }
}

/**
 * Writes changes into a copy of the documents; what they do not touch is shared, not copied.
 *
 * @param input the documents as they are
 * @param changes written one after the other
 * @returns the documents as they would be, still to be read by their schemas
 * @throws ChangeLeadsNowhere
 */
export function applyChanges(input: JobInput, changes: readonly Change[]): unknown {
  return changes.reduce<unknown>((documents, change) => written(documents, fullPath(change), change), input);
}

function fullPath(change: Change): FieldPath {
  switch (change.document) {
    case 'job':
    case 'workshop':
      return [change.document, ...change.path];
    case 'blank':
    case 'artwork':
      if (change.id === undefined) throw new ChangeLeadsNowhere(change);
      return [`${change.document}s`, change.id, ...change.path];
    case 'approval':
      if (change.id === undefined) throw new ChangeLeadsNowhere(change);
      return ['approvedVersions', change.id];
    default:
      return change.document satisfies never;
  }
}

function written(documents: unknown, path: FieldPath, change: Change): unknown {
  try {
    // What is not approved has no entry there.
    const value = change.document === 'approval' ? (change.value ?? undefined) : change.value;
    return setIn(documents, path, value);
  } catch (error) {
    throw error instanceof NoSuchField ? new ChangeLeadsNowhere(change) : error;
  }
}
