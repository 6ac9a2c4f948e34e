import { readDocument } from '@/lib/stored/readDocument';
import type { Registry } from '@/lib/stored/registry';
import { isPlainObject } from '@/lib/stored/sameValue';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { BackendTx } from './backend';

/** Mark of the versions that all records here have been brought up to. */
const SETTLED = 'settled';

/** @returns whether something here may be of an earlier version. */
export async function isUnsettled(tx: BackendTx, registry: Registry): Promise<boolean> {
  const [mark] = await tx.get('meta', [SETTLED]);
  return !isSettled(mark, registry);
}

/**
 * Brings every document of an earlier version up to the known one, and what leaves it into entries and papers. A
 * document that is written without this would let go of them for good, so every writing transaction begins with it;
 * once it is done a mark says so. Records that nothing can read stay as they are.
 */
export async function settleRecords(tx: BackendTx, registry: Registry): Promise<void> {
  if (!(await isUnsettled(tx, registry))) return;
  const readings = (await tx.all('documents')).map((row) => ({ row, reading: readDocument(row, registry) }));
  const older = readings.flatMap(({ row, reading }) =>
    reading.state === 'readable' && isPlainObject(row) && row.version !== reading.document.version
      ? [reading]
      : [],
  );
  await putNew(
    tx,
    'papers',
    older.flatMap(({ left }) => left.papers),
  );
  await putNew(
    tx,
    'entries',
    older.flatMap(({ left }) => left.entries),
  );
  await tx.put(
    'documents',
    // The time stays: nobody has edited anything.
    older.map(({ document }) => ({ ...document, revision: document.revision + 1 })),
  );
  const versions = Object.fromEntries(Object.entries(registry).map(([kind, { version }]) => [kind, version]));
  await tx.put('meta', [{ key: SETTLED, versions }]);
}

// Helpers

/** A later build that was here has settled more than this one asks for. */
function isSettled(mark: unknown, registry: Registry): boolean {
  const versions = isPlainObject(mark) && isPlainObject(mark.versions) ? mark.versions : {};
  return Object.entries(registry).every(([kind, { version }]) => {
    const reached = Object.hasOwn(versions, kind) ? versions[kind] : 0;
    return typeof reached === 'number' && reached >= version;
  });
}

/** What is here under the id is the same already: the id is made of what is said. */
async function putNew(
  tx: BackendTx,
  table: 'entries' | 'papers',
  items: readonly (Entry | Paper)[],
): Promise<void> {
  const here = await tx.get(
    table,
    items.map(({ id }) => id),
  );
  await tx.put(
    table,
    items.filter((_, index) => here[index] === undefined),
  );
}
