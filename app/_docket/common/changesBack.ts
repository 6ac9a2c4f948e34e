import type { Change } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';

/** @returns changes that write back what stands now at the places other changes are about to write. */
export const changesBack = (changes: readonly Change[], input: JobInput): readonly Change[] =>
  changes.map((change) => ({ ...change, value: valueAt(bodyOf(change, input), change.path) }));

function bodyOf({ document, id = '' }: Change, input: JobInput): unknown {
  switch (document) {
    case 'job':
      return input.job;
    case 'workshop':
      return input.workshop;
    case 'blank':
      return input.blanks[id];
    case 'artwork':
      return input.artworks[id];
    case 'approval':
      return Object.hasOwn(input.approvedVersions, id) ? input.approvedVersions[id] : null;
    default:
      return document satisfies never;
  }
}

const valueAt = (body: unknown, path: Change['path']): unknown =>
  path.reduce<unknown>(
    (part, key) => (typeof part === 'object' && part !== null ? Reflect.get(part, key) : undefined),
    body,
  );
