import type { BackendTx } from '@/app/_backend/backend';
import { isPlainObject } from '@/lib/merging/sameValue';
import type { LeftRecords } from '@/lib/stored/leavingRecords';
import { notedByStep } from '@/lib/stored/notedByStep';
import { readDocument } from '@/lib/stored/readDocument';
import type { Registry } from '@/lib/stored/registry';
import { readSteps, stepContentSchema } from '@/lib/stored/step';
import type { Entry, Paper } from '@/shared/schemas/happened';

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
  const older: Extract<ReturnType<typeof readDocument>, { state: 'readable' }>[] = [];
  for (const row of await tx.all('documents')) {
    const reading = readDocument(row, registry);
    const isOlder =
      reading.state === 'readable' && isPlainObject(row) && row.version !== reading.document.version;
    if (isOlder) older.push(reading);
    await turn(tx);
  }
  await keepLeft(
    tx,
    registry,
    older.map(({ left }) => left),
  );
  await tx.put(
    'documents',
    // The time stays: nobody has edited anything.
    older.map(({ document }) => ({ ...document, revision: document.revision + 1 })),
  );
  const versions = Object.fromEntries(Object.entries(registry).map(([kind, { version }]) => [kind, version]));
  await tx.put('meta', [{ key: SETTLED, versions }]);
}

/**
 * Keeps by itself what leaves documents of an earlier version, wherever such a one is about to be written over: the mark
 * says nothing of records that could be read only later.
 */
export async function keepLeft(
  tx: BackendTx,
  registry: Registry,
  left: readonly LeftRecords[],
): Promise<void> {
  const entries = left.flatMap((part) => part.entries);
  await putNew(
    tx,
    'papers',
    left.flatMap((part) => part.papers),
  );
  await putNew(tx, 'entries', entries);
  await settleHistory(tx, registry, entries);
}

// Helpers

/** Steps that noted what is entries now take those back when they are undone. */
async function settleHistory(tx: BackendTx, registry: Registry, entries: readonly Entry[]): Promise<void> {
  if (entries.length === 0) return;
  const counting = new Set(entries.map(({ id }) => id));
  const done = new Set(
    readSteps(await tx.all('steps')).flatMap(({ seq, state }) => (state === 'done' ? [seq] : [])),
  );
  for (const row of await tx.all('contents')) {
    const content = stepContentSchema.safeParse(row);
    if (!content.success || !done.has(content.data.seq) || content.data.noted !== undefined) continue;
    const noted = notedByStep(content.data.changes, registry).filter((id) => counting.has(id));
    if (noted.length > 0) await tx.put('contents', [{ ...content.data, noted }]);
    await turn(tx);
  }
}

/** A look at the store is the one pause a transaction can take: the page gets a turn meanwhile. */
const turn = (tx: BackendTx): PromiseLike<unknown> => tx.get('meta', [SETTLED]);

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
  if (items.length === 0) return;
  const here = await tx.get(
    table,
    items.map(({ id }) => id),
  );
  await tx.put(
    table,
    items.filter((_, index) => here[index] === undefined),
  );
}
