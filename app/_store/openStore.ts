import type { BackendConnection } from '@/app/_backend/backendConnection';
import type { SaveFailure } from '@/app/_backend/saveFailure';
import { fillEmpty, isEmpty } from '@/app/_transactions/fillEmpty';
import { settleOld, tidyFiles } from '@/app/_transactions/settleOld';
import { snapshotOf } from '@/lib/stored/documentChange';
import { prepareEntries } from '@/lib/stored/newEntries';
import type { Bodies, StoreKinds } from '@/lib/stored/registry';
import type { Stored } from '@/shared/schemas/stored';
import type { DocumentStoreOptions } from './documentStore';
import type { SaveState } from './documentsState';
import { newDocuments } from './newDocuments';
import { absorb, readBackend } from './readBackend';
import type { TabState } from './tabState';

type OpenStoreOptions<Kinds extends Bodies> = StoreKinds &
  Pick<DocumentStoreOptions<Kinds>, 'examples' | 'now' | 'visits' | 'fetchRare'> & {
    readonly connection: BackendConnection;
    readonly tabState: () => TabState;
    readonly hold: (next: Partial<TabState>) => void;
    readonly settledKept: (why: SaveFailure | null) => SaveState;
    /** Looks anew at everything, and has the other tabs look at these. */
    readonly rereadAfter: (ids: readonly string[]) => Promise<void>;
    /** The maker has seen that the store is empty, and begins again with the example. */
    readonly beginsAgain: boolean;
  };

/** Opens the store for the first time or again, fills it on the first visit and reads all of it. */
export async function openStore<Kinds extends Bodies>(options: OpenStoreOptions<Kinds>): Promise<void> {
  const { connection, tabState, hold, settledKept } = options;
  const isAgain = tabState().status.status === 'ready';
  if (!isAgain) hold({ status: { status: 'opening', waitingFor: 'storage' } });
  const rare = rareHere(options);
  const opening = await connection.open();
  if (opening.state === 'failed') {
    // What is on the screen stays there, with the reason that it is not kept.
    const why = opening.why === 'cannotOpen' ? 'connectionLost' : opening.why;
    return hold(isAgain ? { kept: settledKept(why) } : { status: { status: 'failed', why: opening.why } });
  }
  // A record that nothing can read yet is not unreadable: nothing is read until all of it can be.
  if (!(await rare)) return hold({ status: { status: 'failed', why: 'schemasMissing' } });
  const first = isAgain ? nothingToAdd : await firstFilling(options).catch(() => null);
  if (first === null) return hold({ status: { status: 'failed', why: 'examplesMissing' } });
  if (first.wipedSince !== null) {
    return hold({ status: { status: 'wiped', since: first.wipedSince }, kept: settledKept(null) });
  }
  const unkept = first.why ?? (await settleOld(connection, options.registry, isAgain));
  const reading = await connection.attempt('read', (tx) => readBackend(tx, options, null, tabState()));
  if (!reading.ok) {
    return hold(
      isAgain ? { kept: settledKept(reading.problem) } : { status: { status: 'failed', why: 'cannotOpen' } },
    );
  }
  hold({
    ...absorb(tabState(), reading.value),
    status: { status: 'ready' },
    kept: settledKept(unkept),
    pending: [...tabState().pending, ...first.pending],
  });
  if (isAgain) return;
  const { renamed, why } = await tidyFiles(connection);
  // Told once: the next write tells anew how it stands.
  if (why !== null && tabState().kept.state === 'kept') hold({ kept: settledKept(why) });
  if (!renamed) return;
  await options.rereadAfter([...tabState().documents.keys()]);
}

/** @returns whether the schemas of rare kinds are here; asked for while the device opens what it keeps. */
const rareHere = <Kinds extends Bodies>({ fetchRare }: OpenStoreOptions<Kinds>): Promise<boolean> =>
  (fetchRare?.() ?? Promise.resolve()).then(
    () => true,
    () => false,
  );

interface FirstFilling {
  readonly pending: TabState['pending'];
  readonly why: SaveFailure | null;
  /** When the maker's own things were last here, where the store has lost them; null where it has not. */
  readonly wipedSince: number | null;
}
const nothingToAdd: FirstFilling = { pending: [], why: null, wipedSince: null };

async function firstFilling<Kinds extends Bodies>({
  connection,
  examples,
  registry,
  entryKinds,
  now,
  visits,
  beginsAgain,
}: OpenStoreOptions<Kinds>): Promise<FirstFilling> {
  if (examples === undefined) return nothingToAdd;
  const empty = await connection.attempt('read', isEmpty);
  if (!empty.ok || !empty.value) return nothingToAdd;
  const last = visits?.last() ?? null;
  // A store that cannot be opened has lost nothing.
  if (last?.holdsOwn === true && !beginsAgain && connection.onlyInMemory() === null) {
    return { ...nothingToAdd, wipedSince: last.at };
  }
  const documents = newDocuments(await examples.load(), registry, now());
  const entries = prepareEntries((await examples.loadEntries?.()) ?? [], entryKinds, () => false);
  if (!entries.ok) throw new BadExample(JSON.stringify(entries.problem));
  const filled = await connection.attempt('writeStrict', (tx) =>
    fillEmpty(tx, documents, now(), { entryKinds, entries: entries.value }),
  );
  if (filled.ok) return nothingToAdd;
  // Not even the examples could be kept: they are shown all the same, and kept once that works.
  return {
    ...nothingToAdd,
    pending: [
      {
        label: examples.label,
        isFirst: true,
        at: now(),
        changes: documents.map(making),
        entries: entries.value.map((entry, index) => ({
          ...entry,
          ...{ id: `example-${index}`, device: 'thisdevice', count: index + 1, at: now() },
        })),
      },
    ],
    why: filled.problem,
  };
}

class BadExample extends Error {
  override readonly name = 'BadExample';
}

const making = (document: Stored) => ({
  id: document.id,
  kind: document.kind,
  before: null,
  after: snapshotOf(document),
});
