import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it } from 'vitest';
import { backendTables } from '@/app/_backend/backend';
import { openDeviceBackend } from '@/app/_backend/deviceBackend';
import { nativeOpen, rowsOf, STORE, writeRow } from './tabs';

const backendOf = async (factory: IDBFactory) => {
  const opening = await openDeviceBackend({
    name: STORE,
    database: () => ({ indexedDB: factory }),
    onWaiting: () => undefined,
    onClosed: () => undefined,
  });
  if (opening.state !== 'open') throw new Error(opening.why);
  return opening.backend;
};

/** A store as a build before made it: the version as the browser counts, and its tables. */
const storeOf = (factory: IDBFactory, version: number, tables: readonly (keyof typeof backendTables)[]) =>
  new Promise<void>((resolve) => {
    const request = factory.open(STORE, version);
    request.onupgradeneeded = () => {
      for (const table of tables) request.result.createObjectStore(table, { keyPath: backendTables[table] });
    };
    request.onsuccess = () => {
      request.result.close();
      resolve();
    };
  });

const first = ['documents', 'steps', 'contents', 'meta', 'aside'] as const;

describe('a store of an earlier build', () => {
  it.each([
    [10, first],
    [20, [...first, 'files']],
    [30, [...first, 'files', 'entries', 'papers', 'exchanged']],
  ] as const)(
    'of the browser’s version %d gets the tables it lacks and keeps its rows',
    async (version, tables) => {
      const factory = new IDBFactory();
      await storeOf(factory, version, tables);
      await writeRow(factory, 'documents', { id: 'job-1', said: 'before' });
      (await backendOf(factory)).close();
      const db = await nativeOpen(factory);
      expect(db.version).toBe(40);
      expect([...db.objectStoreNames]).toEqual(Object.keys(backendTables).toSorted());
      db.close();
      expect(await rowsOf(factory, 'documents')).toEqual([{ id: 'job-1', said: 'before' }]);
    },
  );
});

describe('a transaction', () => {
  it('reads what it has written, before it is kept', async () => {
    const backend = await backendOf(new IDBFactory());
    await backend.transact('write', (tx) =>
      Promise.resolve(tx.put('meta', [{ key: 'a', n: 1 }, { key: 'b' }])),
    );
    const seen = await backend.transact('write', async (tx) => {
      await tx.put('meta', [{ key: 'a', n: 2 }, { key: 'c' }]);
      await tx.drop('meta', ['b']);
      return [await tx.get('meta', ['a', 'b', 'c', 'd']), await tx.keys('meta'), await tx.all('meta')];
    });
    const now = [{ key: 'a', n: 2 }, { key: 'c' }];
    expect(seen).toEqual([[now[0], undefined, now[1], undefined], ['a', 'c'], now]);
    expect(await backend.transact('read', async (tx) => tx.all('meta'))).toEqual(now);
    backend.close();
  });

  it('that waits for something else is refused and has written nothing', async () => {
    const factory = new IDBFactory();
    const backend = await backendOf(factory);
    const work = backend.transact('write', async (tx) => {
      await tx.put('meta', [{ key: 'a' }]);
      await tx.all('documents');
      // The fetch of a page, say: the browser ends the transaction meanwhile.
      await new Promise((resolve) => setTimeout(resolve, 20));
      await tx.put('documents', [{ id: 'job-1' }]);
    });
    await expect(work).rejects.toThrow('A transaction of the store failed');
    expect(await rowsOf(factory, 'meta')).toEqual([]);
    backend.close();
  });

  it('whose work fails writes nothing', async () => {
    const factory = new IDBFactory();
    const backend = await backendOf(factory);
    const work = backend.transact('writeStrict', async (tx) => {
      await tx.put('meta', [{ key: 'a' }]);
      throw new Error('no');
    });
    await expect(work).rejects.toMatchObject({ failures: [{ message: 'no' }, null] });
    expect(await rowsOf(factory, 'meta')).toEqual([]);
    backend.close();
  });

  it.each([
    ['write', 'relaxed'],
    ['writeStrict', 'strict'],
  ] as const)('to %s is %s in the browser’s words', async (mode, durability) => {
    const factory = new IDBFactory();
    const backend = await backendOf(factory);
    const { prototype } = Object.getPrototypeOf(await nativeOpen(factory)).constructor;
    const { transaction } = prototype;
    const asked: unknown[] = [];
    prototype.transaction = function noted(
      this: IDBDatabase,
      ...how: Parameters<IDBDatabase['transaction']>
    ) {
      asked.push(how[2]);
      return transaction.apply(this, how);
    };
    await backend.transact(mode, async (tx) => tx.put('meta', [{ key: 'a' }]));
    prototype.transaction = transaction;
    expect(asked).toEqual([{ durability }]);
    backend.close();
  });
});
