import { snapshotOf } from '@/lib/stored/documentChange';
import type { Bodies } from '@/lib/stored/registry';
import type { Stored } from '@/shared/schemas/stored';
import type { DocumentStoreOptions } from './documentStore';
import type { Kept } from './documentsState';
import { dropUnusedFiles } from './dropUnusedFiles';
import { fillEmpty, isEmpty } from './fillEmpty';
import type { Held } from './held';
import { newDocuments } from './newDocuments';
import type { NotKeptWhy } from './notKept';
import { absorb, readShelf } from './readShelf';
import type { ShelfConnection } from './shelfConnection';

export type OpenStoreOptions<Kinds extends Bodies> = DocumentStoreOptions<Kinds> & {
  readonly connection: ShelfConnection;
  readonly held: () => Held;
  readonly hold: (next: Partial<Held>) => void;
  readonly settledKept: (why: NotKeptWhy | null) => Kept;
};

/** Opens the store for the first time or again, fills it on the first visit and reads all of it. */
export const openStore = async <Kinds extends Bodies>(options: OpenStoreOptions<Kinds>): Promise<void> => {
  const { connection, held, hold, registry, settledKept } = options;
  const isAgain = held().status.status === 'ready';
  if (!isAgain) hold({ status: { status: 'opening', waitingFor: 'storage' } });
  const opening = await connection.open();
  if (opening.state === 'failed') {
    // What is on the screen stays there, with the reason that it is not kept.
    const why = opening.why === 'cannotOpen' ? 'connectionLost' : opening.why;
    return hold(isAgain ? { kept: settledKept(why) } : { status: { status: 'failed', why: opening.why } });
  }
  const first = isAgain ? nothingToAdd : await firstFilling(options).catch(() => null);
  if (first === null) return hold({ status: { status: 'failed', why: 'examplesMissing' } });
  const reading = await connection.attempt('read', (tx) => readShelf(tx, registry, null));
  if (!reading.ok) {
    return hold(
      isAgain ? { kept: settledKept(reading.trouble) } : { status: { status: 'failed', why: 'cannotOpen' } },
    );
  }
  hold({
    ...absorb(held(), reading.value),
    status: { status: 'ready' },
    kept: settledKept(first.why),
    pending: [...held().pending, ...first.pending],
  });
  // What could not be cleared today can be tomorrow.
  const files = isAgain ? null : await connection.attempt('read', async (tx) => tx.keys('files'));
  if (files?.ok && files.value.length > 0) await connection.attempt('write', dropUnusedFiles);
};

type FirstFilling = { readonly pending: Held['pending']; readonly why: NotKeptWhy | null };
const nothingToAdd: FirstFilling = { pending: [], why: null };

const firstFilling = async <Kinds extends Bodies>({
  connection,
  examples,
  registry,
  now,
}: OpenStoreOptions<Kinds>): Promise<FirstFilling> => {
  if (examples === undefined) return nothingToAdd;
  const empty = await connection.attempt('read', isEmpty);
  if (!empty.ok || !empty.value) return nothingToAdd;
  const documents = newDocuments(await examples.load(), registry, now());
  const filled = await connection.attempt('writeStrict', (tx) => fillEmpty(tx, documents, now()));
  if (filled.ok) return nothingToAdd;
  // Not even the examples could be kept: they are shown all the same, and kept once that works.
  return {
    pending: [{ label: examples.label, at: now(), changes: documents.map(making) }],
    why: filled.trouble,
  };
};

const making = (document: Stored) => ({
  id: document.id,
  kind: document.kind,
  before: null,
  after: snapshotOf(document),
});
