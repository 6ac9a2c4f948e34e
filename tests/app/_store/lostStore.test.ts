import { describe, expect, it } from 'vitest';
import { lostStoreWords } from '@/app/_words/store/lostStoreWords';
import { aJobBody } from '@/tests/lib/stored/smallRegistry';
import { fillTheDisk } from './fullDisk';
import {
  aDevice,
  changeJob,
  type Device,
  jobIn,
  openTab,
  openTabWithJob,
  rowsOf,
  STORE,
  writeRow,
} from './tabs';

/** What a browser does when its owner clears the data of a site whose page is open. */
const deleteStore = (device: Device): Promise<void> =>
  new Promise((resolve) => {
    device.factory.deleteDatabase(STORE).onsuccess = () => resolve();
  });

const examples = {
  label: 'Example',
  load: async () => [{ id: 'job-1', kind: 'job', body: aJobBody() } as const],
};
const offer = {
  kind: 'offer',
  about: { kind: 'job', id: 'job-1' },
  series: 'job-1',
  body: (number: { count: number; letter: string | null }) => ({ number, text: 'Twelve shirts' }),
} as const;

/** Two jobs, a removed one, a refill, a paper and a record nothing can read. */
const openFullTab = async (device: Device, name = 'here') => {
  const store = await openTabWithJob(device, name);
  store.actions.edit('Second', [{ do: 'add', kind: 'job', id: 'job-2', body: aJobBody({ name: 'Two' }) }]);
  store.actions.edit('Third', [{ do: 'add', kind: 'job', id: 'job-3', body: aJobBody({ name: 'Three' }) }]);
  store.actions.edit('Remove', [{ do: 'delete', kind: 'job', id: 'job-3' }]);
  store.actions.note('Refill', [{ kind: 'inkRefill', body: { day: '2026-11-03', mL: 10 } }]);
  await store.flush();
  await store.actions.issue('Offer', offer);
  await writeRow(device.factory, 'documents', { id: 'torn', kind: 'job', version: 2 });
  store.close();
  return openTab(device, name);
};

const ids = async (device: Device, table: string) =>
  (await rowsOf(device.factory, table)).map((row) => (row as { id: string }).id).toSorted();

describe('a store that is deleted under an open page', () => {
  it('gets back everything the page holds with the next edit, and the next visit finds it', async () => {
    const device = aDevice();
    const store = await openFullTab(device);
    const entries = await ids(device, 'entries');
    await deleteStore(device);
    changeJob(store, { name: 'After' });
    await store.flush();
    expect(store.getState()).toMatchObject({ kept: { state: 'kept' }, lostStore: { files: 0 } });
    expect(await ids(device, 'documents')).toEqual(['job-1', 'job-2', 'job-3', 'torn']);
    expect(await ids(device, 'entries')).toEqual(entries);
    expect(await ids(device, 'papers')).toHaveLength(1);
    store.actions.acknowledgeLostStore();
    expect(store.getState().lostStore).toBeNull();
    store.close();
    const next = await openTab(device, 'next', {
      examples,
      visits: { last: () => ({ at: 7, holdsOwn: true }), note: () => undefined },
    });
    expect(next.getState()).toMatchObject({ status: 'ready', lostStore: null });
    expect(jobIn(next)?.name).toBe('After');
    expect(next.getState().removed.map(({ id }) => id)).toEqual(['job-3']);
    expect(next.getState().unreadable.map(({ id }) => id)).toEqual(['torn']);
    expect(next.getState().papers.offer).toMatchObject([{ number: { count: 1 }, withdrawn: false }]);
  });

  it('is told as not kept until then, and gets it back when the maker tries again', async () => {
    const device = aDevice();
    const store = await openFullTab(device);
    await deleteStore(device);
    expect(store.getState().kept).toEqual({ state: 'notKept', why: 'connectionLost' });
    await store.actions.retry();
    expect(store.getState()).toMatchObject({ kept: { state: 'kept' }, lostStore: { files: 0 } });
    expect(await ids(device, 'documents')).toEqual(['job-1', 'job-2', 'job-3', 'torn']);
  });

  it('numbers what is issued next after what went out before, and gives no number twice', async () => {
    const device = aDevice();
    const store = await openFullTab(device);
    const before = store.getState().device;
    await deleteStore(device);
    expect(await store.actions.issue('Offer', offer)).toMatchObject({
      state: 'issued',
      paper: { number: { count: 2 } },
    });
    expect(store.getState().device?.id).not.toBe(before?.id);
    expect(await ids(device, 'papers')).toHaveLength(2);
  });

  it('where the disk is full is told as not kept, and no edit is kept without the rest', async () => {
    const device = aDevice();
    const store = await openFullTab(device);
    await deleteStore(device);
    const disk = fillTheDisk();
    changeJob(store, { name: 'After' });
    await store.flush();
    expect(store.getState().kept).toEqual({ state: 'notKept', why: 'diskFull' });
    expect(await ids(device, 'documents')).toEqual([]);
    disk.makeRoom();
    await store.actions.retry();
    expect(await ids(device, 'documents')).toEqual(['job-1', 'job-2', 'job-3', 'torn']);
    expect(jobIn(await openTab(device, 'next'))?.name).toBe('After');
  });

  it('gets back what each of two pages holds, the later of both', async () => {
    const device = aDevice();
    const one = await openFullTab(device, 'one');
    const other = await openTab(device, 'other');
    one.close();
    changeJob(other, { name: 'Later' });
    await other.flush();
    const third = await openTab(device, 'third');
    await deleteStore(device);
    third.actions.edit('New', [{ do: 'add', kind: 'job', id: 'job-4', body: aJobBody({ name: 'Four' }) }]);
    await third.flush();
    changeJob(other, { most: 40 });
    await other.flush();
    expect(await ids(device, 'documents')).toEqual(['job-1', 'job-2', 'job-3', 'job-4', 'torn']);
    expect(jobIn(await openTab(device, 'next'))).toMatchObject({ name: 'Later', most: 40 });
  });

  it('tells of files that were in it alone', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const id = 'a'.repeat(64);
    store.actions.editWithFiles(
      'Picture',
      [{ do: 'change', kind: 'job', id: 'job-1', to: (body) => ({ ...body, fileId: id }) }],
      [{ id, name: 'crest.png', content: new Blob(['1']) }],
    );
    await store.flush();
    await deleteStore(device);
    changeJob(store, { name: 'After' });
    await store.flush();
    expect(store.getState().lostStore).toEqual({ files: 1 });
    expect(lostStoreWords({ files: 1 })).toContain('one file is lost');
    expect(lostStoreWords({ files: 0 })).not.toContain('lost');
  });
});

describe('a store that only lost its connection', () => {
  it('is no other store: nothing is told as lost', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    await store.actions.retry();
    changeJob(store, { name: 'After' });
    await store.flush();
    expect(store.getState()).toMatchObject({ kept: { state: 'kept' }, lostStore: null });
  });
});
