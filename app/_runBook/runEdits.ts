import { newId } from '@/app/_documents/newId';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { type Run, type RunWork, runSchema } from '@/shared/schemas/making/run';

type Edits = Pick<ReadyWorkspace, 'edit'>;

/**
 * Adds a run of works.
 *
 * @returns its id; null where nothing was added
 */
export function addRun({ edit }: Edits, name: string, works: readonly RunWork[]): string | null {
  const id = newId();
  const body = runSchema.parse({ name, works });
  const outcome = edit(name, [{ do: 'add', kind: 'run', id, body }]);
  return outcome.state === 'shown' ? id : null;
}

/**
 * Changes a run.
 *
 * @param label what undo says
 * @param key quick changes with the same one undo as one
 */
export const changeRun = (
  { edit }: Edits,
  id: string,
  label: string,
  to: (run: Run) => Run,
  key?: string,
): void =>
  void edit(label, [{ do: 'change', kind: 'run', id, to }], key === undefined ? undefined : `${id} ${key}`);

/** What a new run is called where nobody has named it: after what it is made for. */
export function nameOfRun(names: readonly string[]): string {
  const [first = 'Run', ...more] = [...new Set(names)];
  const name = more.length === 0 ? first : `${first} and ${more.length} more`;
  return name.slice(0, MOST_LETTERS);
}

// Helpers

/** A name has no more. */
const MOST_LETTERS = 120;
