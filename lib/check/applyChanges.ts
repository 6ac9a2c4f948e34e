import type { Change } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';

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

function fullPath(change: Change): readonly (string | number)[] {
  switch (change.document) {
    case 'job':
    case 'workshop':
      return [change.document, ...change.path];
    case 'blank':
    case 'artwork':
      if (change.id === undefined) throw new ChangeLeadsNowhere(change);
      return [`${change.document}s`, change.id, ...change.path];
    default:
      return change.document satisfies never;
  }
}

function written(target: unknown, [key, ...rest]: readonly (string | number)[], change: Change): unknown {
  if (key === undefined) return change.value;
  if (Array.isArray(target) && typeof key === 'number' && key in target) {
    return target.map((entry: unknown, index) => (index === key ? written(entry, rest, change) : entry));
  }
  if (isRecord(target) && (rest.length === 0 || Object.hasOwn(target, key))) {
    return { ...target, [key]: written(target[key], rest, change) };
  }
  throw new ChangeLeadsNowhere(change);
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
