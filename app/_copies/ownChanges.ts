import { WORKSHOP_ID } from '@/app/_documents/documentsByKind';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { exampleJobIds } from '@/lib/examples/exampleJobIds';
import { exampleThingIds } from '@/lib/examples/exampleThingIds';

const examples = new Set([...exampleJobIds, ...exampleThingIds, WORKSHOP_ID]);

/**
 * When something of the maker's own came or changed last: what they made, what they changed of the example, what they
 * noted or issued.
 *
 * @returns milliseconds since 1970; null where all that is here is the example
 */
export function ownChangedAt({
  documents,
  removed,
  entries,
  papers,
  device,
}: Pick<Workspace, 'documents' | 'removed' | 'entries' | 'papers' | 'device'>): number | null {
  let latest: number | null = null;
  const saw = (at: number) => {
    if (latest === null || at > latest) latest = at;
  };
  for (const { id, revision, updatedAt } of [...documents, ...removed]) {
    // What the example brought is in its first revision for as long as nobody touched it.
    if (revision > 1 || !examples.has(id)) saw(updatedAt);
  }
  for (const one of [...Object.values(entries).flat(), ...Object.values(papers).flat()]) {
    if (one.device === device?.id && !isOfExample(one.body)) saw(one.at);
  }
  return latest;
}

// Helpers

/** The example comes with approvals of its pictures, noted on this device. */
const isOfExample = (body: object): boolean =>
  'artworkId' in body && typeof body.artworkId === 'string' && examples.has(body.artworkId);
