import { IDBObjectStore } from 'fake-indexeddb';
import { expect, it, onTestFinished } from 'vitest';
import { sha256OfBytes } from '@/lib/stored/sha256';
import { aJobBody } from '@/tests/lib/stored/smallRegistry';
import { fillTheDisk } from './fullDisk';
import { aDevice, openTab, openTabWithJob, rowsOf, writeRow } from './tabs';

const MB = 1024 * 1024;

/** Five pictures of 3 MB under names of an earlier build, each held by a job. */
const withOldPictures = async () => {
  const device = aDevice();
  const store = await openTabWithJob(device);
  const contents = [1, 2, 3, 4, 5].map((fill) => new Uint8Array(3 * MB).fill(fill));
  for (const [at] of contents.entries()) {
    const body = aJobBody({ fileId: `picture-${at}` });
    store.actions.edit('New', [{ do: 'add', kind: 'job', id: `held-${at}`, body }]);
  }
  await store.flush();
  store.close();
  for (const [at, content] of contents.entries()) {
    await writeRow(device.factory, 'files', { id: `picture-${at}`, name: 'a.png', content });
  }
  return { device, hashes: contents.map(sha256OfBytes) };
};
const idsOf = async (device: ReturnType<typeof aDevice>) =>
  (await rowsOf(device.factory, 'files')).map((row) => (row as { id: string }).id);

it('old pictures are renamed a few at a time, so that no transaction holds more than some megabytes', async () => {
  const { device, hashes } = await withOldPictures();
  const { put } = IDBObjectStore.prototype;
  const held = new Map<unknown, number>();
  IDBObjectStore.prototype.put = function weighed(this: IDBObjectStore, ...row: Parameters<typeof put>) {
    const { content } = row[0] as { content?: Blob };
    held.set(this.transaction, (held.get(this.transaction) ?? 0) + (content?.size ?? 0));
    return put.apply(this, row);
  };
  onTestFinished(() => {
    IDBObjectStore.prototype.put = put;
  });
  const store = await openTab(device, 'next');
  expect(await idsOf(device)).toEqual(hashes.toSorted());
  expect(Math.max(...held.values())).toBeLessThanOrEqual(6 * MB);
  const named = store.getState().documents.map(({ body }) => (body as { fileId?: string }).fileId);
  expect(named.filter((id) => id !== undefined).toSorted()).toEqual(hashes.toSorted());
});

it('pictures that cannot be renamed are told as not kept, and all are renamed once there is room', async () => {
  const { device, hashes } = await withOldPictures();
  const disk = fillTheDisk('byAbort', 'files');
  const store = await openTab(device, 'next');
  expect(store.getState()).toMatchObject({ status: 'ready', kept: { state: 'notKept', why: 'diskFull' } });
  expect(await idsOf(device)).toHaveLength(5);
  store.close();
  disk.makeRoom();
  expect((await openTab(device, 'later')).getState().kept.state).toBe('kept');
  expect(await idsOf(device)).toEqual(hashes.toSorted());
});

it('renaming that is broken off goes on at the next visit with what is left, and every job has its picture', async () => {
  const { device, hashes } = await withOldPictures();
  const { put } = IDBObjectStore.prototype;
  let files = 0;
  IDBObjectStore.prototype.put = function broken(this: IDBObjectStore, ...row: Parameters<typeof put>) {
    files += this.name === 'files' ? 1 : 0;
    if (files < 4) return put.apply(this, row);
    throw new DOMException('Killed', 'AbortError');
  };
  const store = await openTab(device, 'next');
  IDBObjectStore.prototype.put = put;
  const some = await idsOf(device);
  expect(some.filter((id) => hashes.includes(id))).toHaveLength(2);
  expect(some).toHaveLength(5);
  store.close();
  const again = await openTab(device, 'later');
  expect(await idsOf(device)).toEqual(hashes.toSorted());
  for (const { body } of again.getState().documents) {
    const { fileId } = body as { fileId?: string };
    if (fileId !== undefined) expect(hashes).toContain(fileId);
  }
});
