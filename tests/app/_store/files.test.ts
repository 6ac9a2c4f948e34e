import { describe, expect, it } from 'vitest';
import { backendTables } from '@/app/_backend/backend';
import { bytesOfFile } from '@/lib/stored/storedFile';
import type { Expense } from '@/shared/schemas/orderEvents';
import { aJobBody } from '@/tests/lib/stored/smallRegistry';
import { fillTheDisk } from './fullDisk';
import {
  aDevice,
  jobIn,
  nativeOpen,
  openTab,
  openTabWithJob,
  rowsOf,
  type SmallStore,
  STORE,
  writeRow,
} from './tabs';

/* Files are named by a hash of what is in them. */
const [one, two, nobodys] = ['1', '2', '3'].map((letter) => letter.repeat(64)) as [string, string, string];

const bytes = new Uint8Array([1, 2, 250]);
const picture = (id: string) => ({ id, name: `${id}.png`, content: new Blob([bytes]) });

/** A file as the store hands it out, with what is in it. */
const fileOf = async (store: SmallStore, id: string) => {
  const file = await store.actions.readFile(id);
  return file && { ...file, content: await bytesOfFile(file) };
};

/** Takes a file into the job, whose record names it. */
const takeIn = (store: SmallStore, id: string) =>
  store.actions.editWithFiles(
    'New picture',
    [{ do: 'change', kind: 'job', id: 'job-1', to: (body) => ({ ...body, fileId: id }) }],
    [picture(id)],
  );

const fileIds = async (device: ReturnType<typeof aDevice>) =>
  (await rowsOf(device.factory, 'files')).map((row) => (row as { id: string }).id);

/** The store as the first build made it, with one job in it. */
const makeFirstStore = (factory: IDBFactory): Promise<void> =>
  new Promise((resolve) => {
    const request = factory.open(STORE, 10);
    request.onupgradeneeded = () => {
      const { files: _, ...first } = backendTables;
      for (const [name, keyPath] of Object.entries(first))
        request.result.createObjectStore(name, { keyPath });
      request.transaction?.objectStore('documents').put({
        id: 'job-1',
        kind: 'job',
        version: 2,
        revision: 1,
        updatedAt: 1,
        body: aJobBody(),
      });
    };
    request.onsuccess = () => {
      request.result.close();
      resolve();
    };
  });

describe('a picture and the record that names it', () => {
  it('are kept together and there again in another tab', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    takeIn(store, one);
    await store.flush();
    const other = await openTab(device, 'other');
    expect(jobIn(other)).toMatchObject({ fileId: one });
    expect(await fileOf(other, one)).toEqual({ ...picture(one), content: bytes });
  });

  it('are kept as blobs, which browsers hand on without a copy on the page’s thread', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    takeIn(store, one);
    await store.flush();
    const [row] = await rowsOf(device.factory, 'files');
    expect((row as { content: unknown }).content).toBeInstanceOf(Blob);
  });

  it('are read where an earlier build kept the file as bytes', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    await writeRow(device.factory, 'files', { ...picture(one), content: bytes });
    expect(await fileOf(store, one)).toEqual({ ...picture(one), content: bytes });
  });

  it.each(['byRequest', 'byAbort'] as const)(
    'are neither kept where the disk is full for one of them (%s), and both once there is room',
    async (how) => {
      for (const table of ['files', 'documents']) {
        const device = aDevice();
        const store = await openTabWithJob(device);
        const disk = fillTheDisk(how, table);
        takeIn(store, one);
        await store.flush();
        expect(store.getState().kept).toEqual({ state: 'notKept', why: 'diskFull' });
        // It is on the screen all the same.
        expect(await fileOf(store, one)).toEqual({ ...picture(one), content: bytes });
        disk.makeRoom();
        expect(await fileIds(device)).toEqual([]);
        expect(await rowsOf(device.factory, 'documents')).not.toMatchObject([{ body: { fileId: one } }]);
        await store.actions.retry();
        expect(await fileIds(device)).toEqual([one]);
        expect(await rowsOf(device.factory, 'documents')).toMatchObject([{ body: { fileId: one } }]);
      }
    },
  );

  it('come back by undo after a newer picture, and go again by redo', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    takeIn(store, one);
    await store.flush();
    takeIn(store, two);
    await store.actions.undo();
    expect(jobIn(store)).toMatchObject({ fileId: one });
    expect(await store.actions.readFile(one)).not.toBeNull();
    await store.actions.redo();
    expect(jobIn(store)).toMatchObject({ fileId: two });
    expect(await store.actions.readFile(two)).not.toBeNull();
  });

  it('stay while a step of the history names them, and go when the store is next opened after that', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    takeIn(store, one);
    await store.flush();
    takeIn(store, two);
    await store.flush();
    await writeRow(device.factory, 'files', picture(nobodys));
    store.close();
    (await openTab(device, 'next')).close();
    expect(await fileIds(device)).toEqual([one, two]);
    const db = await nativeOpen(device.factory);
    const clearing = db.transaction('contents', 'readwrite').objectStore('contents').clear();
    await new Promise((resolve) => {
      clearing.onsuccess = resolve;
    });
    db.close();
    (await openTab(device, 'last')).close();
    expect(await fileIds(device)).toEqual([two]);
  });
});

describe('a file that only an entry names', () => {
  const receipt = { fileId: one, fileName: 'receipt.pdf', bytes: 3, mediaType: 'application/pdf' };
  const expense: Expense = {
    ...{ orderId: null, day: '2026-11-03', what: 'Paper', kind: 'paper', amountMinor: 1200, currency: 'USD' },
    receipt: { ...receipt, purpose: 'receipt', addedOn: '2026-11-03' },
  };

  it('is kept with it, stays when the store is next opened, and goes into a copy', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    store.actions.note('Paper', [{ kind: 'expense', body: expense }], [], [picture(one)]);
    await store.flush();
    await writeRow(device.factory, 'files', picture(nobodys));
    store.close();
    (await openTab(device, 'next')).close();
    const last = await openTab(device, 'last');
    expect(await fileIds(device)).toEqual([one]);
    expect((await last.actions.makeCopy('everything')).holds.files).toBe(1);
  });

  it('is neither kept nor noted where the disk is full', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const disk = fillTheDisk('byRequest', 'files');
    store.actions.note('Paper', [{ kind: 'expense', body: expense }], [], [picture(one)]);
    await store.flush();
    expect(store.getState().kept).toEqual({ state: 'notKept', why: 'diskFull' });
    disk.makeRoom();
    expect(await rowsOf(device.factory, 'entries')).toEqual([]);
    await store.actions.retry();
    expect([await fileIds(device), await rowsOf(device.factory, 'entries')]).toMatchObject([[one], [{}]]);
  });
});

describe('a store of the first version', () => {
  it('gets the table of files, and keeps all it has', async () => {
    const device = aDevice();
    await makeFirstStore(device.factory);
    const store = await openTab(device, 'new');
    expect(jobIn(store)?.name).toBe('Club order');
    takeIn(store, one);
    await store.flush();
    expect(await fileIds(device)).toEqual([one]);
  });
});
