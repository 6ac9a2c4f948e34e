import { describe, expect, it } from 'vitest';
import { aJobBody, aStoredJob } from '@/tests/lib/stored/smallRegistry';
import { aDevice, changeJob, jobIn, openTab, openTabWithJob, rowsOf, writeRow } from './tabs';

describe('an edit', () => {
  it('shows at once and is kept a moment later', async () => {
    const store = await openTabWithJob(aDevice());
    expect(changeJob(store, { name: 'Team' })).toEqual({ state: 'shown' });
    expect(jobIn(store)?.name).toBe('Team');
    expect(store.getState().kept).toEqual({ state: 'keeping' });
    await store.flush();
    expect(store.getState().kept).toEqual({ state: 'kept', at: 1_000_000 });
  });

  it('is there after a reload', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    changeJob(store, { name: 'Team' });
    await store.flush();
    store.close();
    expect(jobIn(await openTab(device, 'here'))).toEqual(aJobBody({ name: 'Team' }));
  });

  it('is in the store without anybody waiting for it, when the page is closed 350 ms later', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    changeJob(store, { name: 'Team' });
    await new Promise((resolve) => setTimeout(resolve, 350));
    expect(await rowsOf(device.factory, 'documents')).toMatchObject([{ body: { name: 'Team' } }]);
  });

  it('of several documents is kept whole', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    store.actions.edit('Both', [
      { do: 'change', kind: 'job', id: 'job-1', to: (body) => ({ ...body, name: 'Team' }) },
      { do: 'add', kind: 'blank', id: 'shirt', body: { name: 'Shirt' } },
    ]);
    await store.flush();
    const [other] = [await openTab(device, 'there')];
    expect(other.getState().documents.map(({ id, revision }) => [id, revision])).toEqual([
      ['job-1', 2],
      ['shirt', 1],
    ]);
  });

  it('that could not be read again is refused, and nothing changes', async () => {
    const store = await openTabWithJob(aDevice());
    expect(changeJob(store, { name: '' })).toMatchObject({
      state: 'refused',
      findings: [{ code: 'bodyInvalid', issues: [{ path: ['name'] }] }],
    });
    expect(jobIn(store)?.name).toBe('Club order');
  });

  it('that changes nothing is no step of the history', async () => {
    const store = await openTabWithJob(aDevice());
    expect(changeJob(store, { name: 'Club order' })).toEqual({ state: 'unchanged' });
    expect(store.getState().undoLabel).toBe('New job');
  });

  it('before the store is open is not taken up', () => {
    expect(changeJob(aDevice().tab(), { name: 'Team' })).toEqual({ state: 'notOpen' });
  });

  it('leaves the objects of all other documents the same, so that their screens rest', async () => {
    const store = await openTabWithJob(aDevice());
    store.actions.edit('New', [{ do: 'add', kind: 'blank', id: 'shirt', body: { name: 'Shirt' } }]);
    await store.flush();
    const before = store.getState().documents;
    changeJob(store, { name: 'Team' });
    const shown = store.getState().documents;
    await store.flush();
    const kept = store.getState().documents;
    expect(shown[1]).toBe(before[1]);
    expect(kept[1]).toBe(before[1]);
    expect(kept[0]).toBe(shown[0]);
  });
});

describe('a deleted document', () => {
  it('is gone from the screen, stays in the store as a tombstone, and comes back by undo', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    store.actions.edit('Delete', [{ do: 'delete', kind: 'job', id: 'job-1' }]);
    expect(store.getState().documents).toEqual([]);
    await store.flush();
    expect(await rowsOf(device.factory, 'documents')).toMatchObject([
      { deletedAt: 1_000_000, body: { name: 'Club order' } },
    ]);
    await store.actions.undo();
    expect(jobIn(store)).toEqual(aJobBody());
    expect(await rowsOf(device.factory, 'documents')).toEqual([
      expect.not.objectContaining({ deletedAt: expect.anything() }),
    ]);
  });
});

describe('a record that cannot be read', () => {
  const broken = {
    ...aStoredJob({ id: 'job-7' }),
    body: { name: 'Half', lines: 'lost' },
    left: [1, { a: null }],
  };

  it('is shown with the reason and kept as it was found, whatever is edited beside it', async () => {
    const device = aDevice();
    (await openTabWithJob(device)).close();
    await writeRow(device.factory, 'documents', broken);
    const store = await openTab(device, 'here');
    expect(store.getState().unreadable).toMatchObject([
      { id: 'job-7', kind: 'job', raw: broken, findings: [{ code: 'notADocument' }] },
    ]);
    changeJob(store, { name: 'Team' });
    await store.flush();
    await store.actions.undo();
    const rows = await rowsOf(device.factory, 'documents');
    expect(JSON.stringify(rows[1])).toBe(JSON.stringify(broken));
  });

  it('is not written over when it broke while it was open', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    await writeRow(device.factory, 'documents', { ...broken, id: 'job-1' });
    changeJob(store, { name: 'Team' });
    await store.flush();
    expect(store.getState().kept).toEqual({ state: 'notKept', why: 'unreadableDocument' });
    expect(jobIn(store)?.name).toBe('Team');
    expect(await rowsOf(device.factory, 'documents')).toEqual([{ ...broken, id: 'job-1' }]);
  });

  it('does not keep edits of other documents from being kept', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    await writeRow(device.factory, 'documents', { ...broken, id: 'job-1' });
    changeJob(store, { name: 'Team' });
    store.actions.edit('New', [{ do: 'add', kind: 'blank', id: 'shirt', body: { name: 'Shirt' } }]);
    await store.flush();
    expect(await rowsOf(device.factory, 'documents')).toMatchObject([{ id: 'job-1' }, { id: 'shirt' }]);
    expect(store.getState().kept).toEqual({ state: 'notKept', why: 'unreadableDocument' });
  });
});

describe('a document of another version', () => {
  it('of an earlier build is shown as of today, and written so with the next edit', async () => {
    const device = aDevice();
    (await openTabWithJob(device)).close();
    const old = aStoredJob({ version: 1, revision: 4, body: { name: 'Fair', copies: 12 } });
    await writeRow(device.factory, 'documents', old);
    const store = await openTab(device, 'here');
    expect(jobIn(store)).toEqual({ name: 'Fair', lines: [{ id: 'first', quantity: 12 }] });
    changeJob(store, { name: 'Team' });
    await store.flush();
    expect(await rowsOf(device.factory, 'documents')).toMatchObject([{ version: 2, revision: 5 }]);
  });

  it('of a later build is not written by this one, which says so', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const newer = aStoredJob({ version: 3, revision: 2, body: { title: 'New shape' } });
    await writeRow(device.factory, 'documents', newer);
    changeJob(store, { name: 'Team' });
    await store.flush();
    expect(store.getState().kept).toEqual({ state: 'notKept', why: 'newerDocument' });
    expect(await store.actions.undo()).toMatchObject({ state: 'moved' });
    expect(await store.actions.undo()).toEqual({ state: 'notKept', why: 'newerDocument' });
    expect(await rowsOf(device.factory, 'documents')).toEqual([newer]);
  });
});
