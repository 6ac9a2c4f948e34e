// @vitest-environment jsdom
import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it, onTestFinished } from 'vitest';
import { openDeviceBackend } from '@/app/_backend/deviceBackend';
import { appKinds } from '@/app/_store/appKinds';
import { createDocumentStore } from '@/app/_store/createDocumentStore';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { type DocumentBodies, kinds } from '@/lib/kinds/kinds';
import { paperKinds } from '@/lib/kinds/paperKinds';
import { rareSchemas } from '@/lib/kinds/rareSchemas';
import { runSchema } from '@/shared/schemas/making/run';
import { bringBack, copyOf, rowsOf, STORE } from '@/tests/app/_store/tabs';
import { clubStandard, pieceOf, RUN } from '@/tests/fixtures/clubPressing';

/* A run, a piece pressed in it and its standard: a draft, an entry and a paper whose schemas are fetched. */

type Loading = () => Promise<typeof rareSchemas>;

const aStore = (factory: IDBFactory, load: Loading) => {
  const store = createDocumentStore<DocumentBodies>({
    ...appKinds(load),
    ...{ tab: 'here', now: () => 1000 },
    openBackend: (on) => openDeviceBackend({ ...on, name: STORE, database: () => ({ indexedDB: factory }) }),
    openMessages: () => ({ tell: () => undefined, close: () => undefined }),
    watchPage: () => () => undefined,
  });
  onTestFinished(store.close);
  return store;
};
const opened = async (factory: IDBFactory) => {
  const store = aStore(factory, async () => rareSchemas);
  await store.open();
  return store;
};
const run = runSchema.parse({ name: 'Ramblers' });

/** A device on which the run was begun, closed again before anybody looks. */
const aMakersDevice = async (): Promise<IDBFactory> => {
  const factory = new IDBFactory();
  const store = await opened(factory);
  store.actions.edit('New run', [{ do: 'add', kind: 'run', id: RUN, body: run }]);
  await store.flush();
  const issued = await store.actions.issue('Begin', {
    ...{ kind: 'runStandard', about: { kind: 'run', id: RUN }, series: RUN },
    body: (number) => ({ ...clubStandard, number }),
  });
  expect(issued.state).toBe('issued');
  store.actions.note('A piece', [{ kind: 'pressing', body: pieceOf('M') }]);
  await store.flush();
  store.close();
  return factory;
};
const shown = (store: Awaited<ReturnType<typeof opened>>) => {
  const { kinds: now, entries, papers, unreadable } = store.getState();
  return {
    runs: Object.keys(now.run.bodies),
    pressed: entries.pressing.map(({ body }) => body.size),
    standards: papers.runStandard.map(({ body }) => body.title),
    unreadable: unreadable.map(({ id }) => id),
  };
};
const all = { runs: [RUN], pressed: ['M'], standards: ['Ramblers'], unreadable: [] };
const tables = ['documents', 'entries', 'papers', 'aside'] as const;
const keptIn = (factory: IDBFactory) => Promise.all(tables.map((table) => rowsOf(factory, table)));

describe('records of rare kinds', () => {
  it('are read once their schemas are here, and nothing is called unreadable before', async () => {
    const factory = await aMakersDevice();
    const before = await keptIn(factory);
    let arrive = (_: typeof rareSchemas): void => undefined;
    const coming = new Promise<typeof rareSchemas>((resolve) => {
      arrive = resolve;
    });
    const store = aStore(factory, () => coming);
    const seen: unknown[] = [];
    store.subscribe(() => seen.push(store.getState().unreadable.length));
    const opening = store.open();
    // Long enough for the device to have opened and been read many times over.
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(store.getState()).toMatchObject({ status: 'opening', unreadable: [] });
    expect(store.actions.edit('Early', [{ do: 'delete', kind: 'run', id: RUN }])).toEqual({
      state: 'notOpen',
    });
    expect(await keptIn(factory)).toEqual(before);
    arrive(rareSchemas);
    await opening;
    expect(store.getState().status).toBe('ready');
    expect(shown(store)).toEqual(all);
    expect(new Set(seen)).toEqual(new Set([0]));
    expect(await keptIn(factory)).toEqual(before);
  });

  it('stay as they are where their schemas cannot be fetched, and are read when that works', async () => {
    const factory = await aMakersDevice();
    const before = await keptIn(factory);
    let isOnline = false;
    const store = aStore(factory, async () => {
      if (!isOnline) throw new Error('Failed to load chunk');
      return rareSchemas;
    });
    await store.open();
    expect(store.getState()).toMatchObject({ status: 'failed', why: 'schemasMissing', unreadable: [] });
    expect(await keptIn(factory)).toEqual(before);
    isOnline = true;
    await store.actions.retry();
    expect(shown(store)).toEqual(all);
  });

  it('go into a copy and come out of it on a device that had none', async () => {
    const copy = await copyOf(await opened(await aMakersDevice()));
    const other = await opened(new IDBFactory());
    expect(await bringBack(other, copy)).toMatchObject({ state: 'replaced' });
    expect(shown(other)).toEqual(all);
  });

  it('have each a schema that is fetched, the one that commands and tests read by', async () => {
    const fetched = appKinds(async () => rareSchemas);
    await fetched.fetchRare();
    const tablesOfBoth = [
      [fetched.registry, kinds],
      [fetched.entryKinds, entryKinds],
      [fetched.paperKinds, paperKinds],
    ] as const;
    for (const [late, whole] of tablesOfBoth) {
      expect(Object.keys(late)).toEqual(Object.keys(whole));
      for (const [kind, { schema }] of Object.entries(late)) {
        const issues = schema.safeParse({ noSuchKey: 1 }).error?.issues;
        const reading = Object.entries(whole).find(([name]) => name === kind)?.[1];
        expect(issues, kind).toEqual(reading?.schema.safeParse({ noSuchKey: 1 }).error?.issues);
        expect(issues?.length, kind).toBeGreaterThan(0);
      }
    }
  });

  it('are not read by guess while their schema is not here: that would be a mistake of the app', () => {
    const { registry } = appKinds(async () => rareSchemas);
    expect(() => registry.run.schema.safeParse(run)).toThrow('before its schema was here');
  });
});
