import { IDBDatabase } from 'fake-indexeddb';
import { describe, expect, it, vi } from 'vitest';
import type { NewDocument } from '@/app/_store/newDocuments';
import { aJobBody, type SmallBodies } from '@/tests/lib/stored/smallRegistry';
import { eventually } from '@/tests/tools/eventually';
import { fillTheDisk } from './fullDisk';
import {
  aDevice,
  bringBack,
  changeJob,
  copyOf,
  jobIn,
  openTab,
  openTabWithJob,
  rowsOf,
  writeRow,
} from './tabs';

const firstDocuments: readonly NewDocument<SmallBodies>[] = [
  { id: 'workshop', kind: 'workshop', body: { name: 'Example workshop' } },
  { id: 'job-1', kind: 'job', body: aJobBody({ name: 'Example' }) },
];
const examples = { label: 'Examples', load: async () => firstDocuments };

describe('the first visit', () => {
  it('shows the examples as soon as anything is shown', async () => {
    const store = await openTab(aDevice(), 'here', { examples });
    expect(store.getState().documents.map(({ id }) => id)).toEqual(['job-1', 'workshop']);
    expect(store.getState()).toMatchObject({ kept: { state: 'kept' }, canUndo: false });
  });

  it('notes with the examples what is noted of them, once, and takes nothing of it back by undo', async () => {
    const device = aDevice();
    const approval = { kind: 'approval', body: { artworkId: 'crest', version: 1 } };
    const noting = { ...examples, loadEntries: async () => [approval] };
    const store = await openTab(device, 'here', { examples: noting });
    expect(store.getState().entries.approval.map(({ body }) => body)).toEqual([approval.body]);
    expect(store.getState().canUndo).toBe(false);
    store.close();
    const again = await openTab(device, 'here', { examples: noting });
    expect(again.getState().entries.approval).toHaveLength(1);
  });

  it('on a full disk shows what is noted of the examples too, and keeps it once there is room', async () => {
    const device = aDevice();
    const approval = { kind: 'approval', body: { artworkId: 'crest', version: 1 } };
    const { makeRoom } = fillTheDisk();
    const store = await openTab(device, 'here', {
      examples: { ...examples, loadEntries: async () => [approval] },
    });
    expect(store.getState().entries.approval).toHaveLength(1);
    makeRoom();
    changeJob(store, { name: 'Team' });
    await store.flush();
    expect((await openTab(device, 'there')).getState().entries.approval.map(({ body }) => body)).toEqual([
      approval.body,
    ]);
  });

  it('in two tabs at once puts the examples in once', async () => {
    const device = aDevice();
    // Both have found the store empty before either fills it.
    let bothLook = (): void => undefined;
    const both = new Promise<void>((resolve) => {
      bothLook = resolve;
    });
    let looking = 0;
    const load = async () => {
      looking += 1;
      if (looking === 2) bothLook();
      await both;
      return firstDocuments;
    };
    await Promise.all(
      ['here', 'there'].map((name) => openTab(device, name, { examples: { ...examples, load } })),
    );
    expect(await rowsOf(device.factory, 'documents')).toMatchObject([{ revision: 1 }, { revision: 1 }]);
  });

  it('does not come again once the maker has deleted everything', async () => {
    const device = aDevice();
    const store = await openTab(device, 'here', { examples });
    store.actions.edit('Clear', [
      { do: 'delete', kind: 'job', id: 'job-1' },
      { do: 'delete', kind: 'workshop', id: 'workshop' },
    ]);
    await store.flush();
    store.close();
    expect((await openTab(device, 'here', { examples })).getState().documents).toEqual([]);
  });

  it('says when the examples could not be fetched, and starts with them once they can be', async () => {
    let isOnline = false;
    const load = async () => {
      if (!isOnline) throw new Error('Failed to load chunk');
      return firstDocuments;
    };
    const store = await openTab(aDevice(), 'here', { examples: { ...examples, load } });
    expect(store.getState()).toMatchObject({ status: 'failed', why: 'examplesMissing' });
    isOnline = true;
    await store.actions.retry();
    expect(store.getState().documents).toHaveLength(firstDocuments.length);
  });

  it('on a full disk shows the examples all the same and keeps them once there is room', async () => {
    const device = aDevice();
    const { makeRoom } = fillTheDisk();
    const store = await openTab(device, 'here', { examples });
    expect(store.getState()).toMatchObject({ status: 'ready', kept: { state: 'notKept', why: 'diskFull' } });
    expect(jobIn(store)?.name).toBe('Example');
    makeRoom();
    changeJob(store, { name: 'Team' });
    await store.flush();
    expect(jobIn(await openTab(device, 'there'))?.name).toBe('Team');
  });

  it('can be filled by the screen as well, and then only once', async () => {
    const device = aDevice();
    const store = await openTab(device, 'here');
    expect(await store.actions.fill(firstDocuments)).toBe(true);
    expect(jobIn(store)?.name).toBe('Example');
    expect(await store.actions.fill(firstDocuments)).toBe(false);
  });
});

describe('starting an own workshop', () => {
  const own: readonly NewDocument<SmallBodies>[] = [
    { id: 'workshop', kind: 'workshop', body: { name: 'Mine' } },
    { id: 'job-2', kind: 'job', body: aJobBody({ name: 'First' }) },
  ];
  const namesIn = (store: Awaited<ReturnType<typeof openTab>>) =>
    store.getState().documents.map(({ body }) => body.name);

  it('puts it beside the examples, in the place of what has its ids, in one step that undo takes back', async () => {
    const store = await openTab(aDevice(), 'here', { examples });
    expect(await store.actions.putBeside('Start of your own workshop', own)).toEqual({ state: 'replaced' });
    expect(namesIn(store).toSorted()).toEqual(['Example', 'First', 'Mine']);
    expect(store.getState().undoLabel).toBe('Start of your own workshop');
    await store.actions.undo();
    expect(namesIn(store).toSorted()).toEqual(['Example', 'Example workshop']);
    await store.actions.redo();
    expect(namesIn(store).toSorted()).toEqual(['Example', 'First', 'Mine']);
  });

  it('is seen by the other tabs', async () => {
    const device = aDevice();
    const here = await openTab(device, 'here', { examples });
    const there = await openTab(device, 'there');
    await here.actions.putBeside('Start', own);
    await eventually(() => expect(namesIn(there).toSorted()).toEqual(['Example', 'First', 'Mine']));
  });
});

describe('a backup', () => {
  /** A store with a deleted document, an edited one, and one nobody can read. */
  const usedStore = async () => {
    const device = aDevice();
    const first = await openTab(device, 'here', { examples });
    first.actions.edit('Delete', [{ do: 'delete', kind: 'workshop', id: 'workshop' }]);
    changeJob(first, { name: 'Team' });
    await first.flush();
    first.close();
    await writeRow(device.factory, 'documents', broken);
    return openTab(device, 'here');
  };
  const broken = { id: 'odd', kind: 'job', half: true };

  it('brings everything back on an empty device, what nobody can read included', async () => {
    const file = await copyOf(await usedStore());
    const device = aDevice();
    const store = await openTab(device, 'there');
    expect(await bringBack(store, file)).toEqual({ state: 'replaced' });
    expect(store.getState().documents).toMatchObject([{ id: 'job-1', body: { name: 'Team' } }]);
    expect(store.getState().unreadable).toMatchObject([{ raw: broken }]);
    expect(await rowsOf(device.factory, 'documents')).toMatchObject([
      { id: 'job-1' },
      broken,
      { id: 'workshop', deletedAt: 1_000_000 },
    ]);
  });

  it('taken and brought back changes nothing in the same store', async () => {
    const store = await usedStore();
    const before = store.getState();
    await bringBack(store, await copyOf(store));
    const { documents, unreadable } = store.getState();
    expect(documents.map(({ body }) => body)).toEqual(before.documents.map(({ body }) => body));
    expect(unreadable).toEqual(before.unreadable);
  });

  it('brought back takes the place of what is there, and undo takes it back', async () => {
    const file = await copyOf(await usedStore());
    const store = await openTabWithJob(aDevice());
    store.actions.edit('New', [{ do: 'add', kind: 'blank', id: 'shirt', body: { name: 'Shirt' } }]);
    await bringBack(store, file);
    expect(store.getState().documents).toMatchObject([{ id: 'job-1', body: { name: 'Team' } }]);
    await store.actions.undo();
    expect(store.getState().documents).toMatchObject([
      { id: 'job-1', body: { name: 'Club order' } },
      { id: 'shirt' },
    ]);
  });

  it('mends a record nobody could read and keeps the broken one aside', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const file = await copyOf(store);
    store.close();
    await writeRow(device.factory, 'documents', { ...broken, id: 'job-1', revision: 6 });
    const again = await openTab(device, 'here');
    await bringBack(again, file);
    expect(jobIn(again)).toEqual(aJobBody());
    expect(again.getState().unreadable).toMatchObject([{ raw: { ...broken, id: 'job-1' } }]);
    expect(await rowsOf(device.factory, 'documents')).toMatchObject([{ id: 'job-1', revision: 7 }]);
    expect(await again.actions.lookAtCopy(await copyOf(again))).toMatchObject({
      plan: { copy: { unreadable: [{ raw: { ...broken, id: 'job-1' } }] } },
    });
  });

  it('that finds no room changes nothing and says so', async () => {
    const file = await copyOf(await usedStore());
    const store = await openTabWithJob(aDevice());
    fillTheDisk();
    expect(await bringBack(store, file)).toEqual({ state: 'notKept', why: 'diskFull' });
    expect(jobIn(store)).toEqual(aJobBody());
  });
});

describe('durability', () => {
  it('is strict where a lost write would lose everything, and left to the browser while typing', async () => {
    const transaction = vi.spyOn(IDBDatabase.prototype, 'transaction');
    const writes = () => {
      const asked = transaction.mock.calls.filter(([, mode]) => mode === 'readwrite');
      transaction.mockClear();
      return asked.map((call: readonly unknown[]) => call[2]);
    };
    const store = await openTab(aDevice(), 'here', { examples });
    expect(writes()).toEqual([{ durability: 'strict' }]);
    changeJob(store, { name: 'Team' });
    await store.flush();
    expect(writes()).toEqual([{ durability: 'relaxed' }]);
    await store.actions.putBeside('Start', [{ id: 'job-2', kind: 'job', body: aJobBody({ name: 'First' }) }]);
    expect(writes()).toEqual([{ durability: 'strict' }]);
    const file = await copyOf(store);
    changeJob(store, { name: 'Since' });
    await store.flush();
    writes();
    await bringBack(store, file);
    expect(writes()).toEqual([{ durability: 'strict' }]);
    transaction.mockRestore();
  });
});
