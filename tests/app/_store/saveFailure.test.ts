import { forceCloseDatabase, type IDBDatabase } from 'fake-indexeddb';
import { describe, expect, it, vi } from 'vitest';
import { saveFailureOf } from '@/app/_backend/saveFailure';
import { aJobBody } from '@/tests/lib/stored/smallRegistry';
import { fillTheDisk } from './fullDisk';
import { aDevice, changeJob, copyOf, jobIn, openTab, openTabWithJob, rowsOf } from './tabs';

describe('saveFailureOf', () => {
  const quota = new DOMException('full', 'QuotaExceededError');
  it.each([
    ['a full disk', quota, 'diskFull'],
    [
      'a full disk inside an abort',
      Object.assign(new Error('x'), { name: 'AbortError', inner: quota }),
      'diskFull',
    ],
    ['a full disk as a cause', new Error('x', { cause: new Error('y', { cause: quota }) }), 'diskFull'],
    ['a full disk in one of many rows', { name: 'BulkError', failures: [new Error('x'), quota] }, 'diskFull'],
    [
      'a disk without a byte left, in the words of Chromium',
      new DOMException(
        'Connection is closing because of: IO error: 3.log: FILE_ERROR_NO_SPACE',
        'UnknownError',
      ),
      'diskFull',
    ],
    [
      'a disk with too little room, in the words of Chromium',
      new DOMException('Failed to write blobs (IOError)', 'DataError'),
      'diskFailed',
    ],
    ['a forbidden store', new DOMException('no', 'SecurityError'), 'storageForbidden'],
    ['a closed store', { name: 'InvalidStateError' }, 'connectionLost'],
    ['an abort for no reason', new DOMException('no', 'AbortError'), 'writeRefused'],
    ['text', 'no', 'writeRefused'],
  ])('names %s', (_what, error, why) => {
    expect(saveFailureOf(error)).toBe(why);
  });

  it('comes back from an error that holds itself', () => {
    const ring: { name: string; inner?: unknown } = { name: 'AbortError' };
    ring.inner = ring;
    expect(saveFailureOf(ring)).toBe('writeRefused');
  });
});

describe.each(['byRequest', 'byAbort'] as const)('on a full disk, refused %s,', (how) => {
  it('the screen says so, and the text stays', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    fillTheDisk(how);
    changeJob(store, { name: 'Team' });
    await store.flush();
    expect(store.getState().kept).toEqual({ state: 'notKept', why: 'diskFull' });
    expect(jobIn(store)?.name).toBe('Team');
    expect(await rowsOf(device.factory, 'documents')).toMatchObject([{ body: { name: 'Club order' } }]);
  });

  it('all that was typed is kept with the next edit once there is room, without retyping', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const { makeRoom } = fillTheDisk(how);
    changeJob(store, { name: 'Team' });
    await store.flush();
    makeRoom();
    changeJob(store, { most: 40 });
    await store.flush();
    expect(store.getState().kept.state).toBe('kept');
    expect(jobIn(await openTab(device, 'there'))).toEqual(aJobBody({ name: 'Team', most: 40 }));
  });

  it('all that was typed is kept when asked for once there is room', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const { makeRoom } = fillTheDisk(how);
    changeJob(store, { name: 'Team' });
    await store.actions.retry();
    expect(store.getState().kept).toEqual({ state: 'notKept', why: 'diskFull' });
    makeRoom();
    await store.actions.retry();
    expect(store.getState().kept.state).toBe('kept');
    expect(await rowsOf(device.factory, 'documents')).toMatchObject([{ body: { name: 'Team' } }]);
  });
});

describe('while nothing can be kept', () => {
  it('edits are undone and redone in memory', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const { makeRoom } = fillTheDisk();
    changeJob(store, { name: 'Team' });
    changeJob(store, { most: 40 });
    await store.flush();
    expect(await store.actions.undo()).toMatchObject({
      state: 'moved',
      label: 'Change job',
      moved: [{ kind: 'job', path: ['most'] }],
    });
    expect(jobIn(store)).toEqual(aJobBody({ name: 'Team' }));
    expect(store.getState().canRedo).toBe(true);
    await store.actions.redo();
    expect(jobIn(store)).toEqual(aJobBody({ name: 'Team', most: 40 }));
    makeRoom();
    await store.actions.retry();
    expect(jobIn(await openTab(device, 'there'))).toEqual(aJobBody({ name: 'Team', most: 40 }));
  });

  it('what was taken back is forgotten once something else is edited', async () => {
    const store = await openTabWithJob(aDevice());
    fillTheDisk();
    changeJob(store, { name: 'Team' });
    await store.actions.undo();
    changeJob(store, { most: 40 });
    await store.flush();
    expect(store.getState().canRedo).toBe(false);
    expect(jobIn(store)).toEqual(aJobBody({ most: 40 }));
  });

  it('a copy of everything can still be taken', async () => {
    const store = await openTabWithJob(aDevice());
    fillTheDisk();
    changeJob(store, { name: 'Team' });
    await store.flush();
    expect(await store.actions.lookAtCopy(await copyOf(store))).toMatchObject({
      plan: { copy: { drafts: [{ body: { name: 'Team' } }] } },
    });
  });

  it('an undo that reaches into the store is told as not kept and changes nothing', async () => {
    const store = await openTabWithJob(aDevice());
    fillTheDisk();
    expect(await store.actions.undo()).toEqual({ state: 'notKept', why: 'diskFull' });
    expect(jobIn(store)).toEqual(aJobBody());
    expect(store.getState().undoLabel).toBe('New job');
  });
});

describe('a write that fails halfway', () => {
  it.each(['steps', 'contents'])('at the %s, leaves everything as it was', async (table) => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const everything = () =>
      Promise.all(['documents', 'steps', 'contents'].map((name) => rowsOf(device.factory, name)));
    const before = await everything();
    fillTheDisk('byRequest', table);
    changeJob(store, { name: 'Team' });
    await store.flush();
    expect(store.getState().kept).toEqual({ state: 'notKept', why: 'diskFull' });
    expect(await everything()).toEqual(before);
  });
});

describe('without a store', () => {
  const forbidden = () => {
    throw new DOMException('Access is denied.', 'SecurityError');
  };
  it.each([
    ['missing', () => ({ indexedDB: undefined }), 'noStorage'],
    ['forbidden', forbidden, 'storageForbidden'],
    [
      'forbidden when it is opened',
      () => ({ indexedDB: Object.assign(aDevice().factory, { open: forbidden }) }),
      'storageForbidden',
    ],
  ])('the app works in memory and says why, where it is %s', async (_how, database, why) => {
    const store = await openTabWithJob(aDevice(), 'here', { database });
    changeJob(store, { name: 'Team' });
    await store.flush();
    expect(store.getState()).toMatchObject({ status: 'ready', kept: { state: 'notKept', why } });
    expect(jobIn(store)?.name).toBe('Team');
    await store.actions.undo();
    expect(jobIn(store)?.name).toBe('Club order');
    await store.actions.retry();
    expect(jobIn(store)?.name).toBe('Club order');
    await store.actions.redo();
    expect(jobIn(store)?.name).toBe('Team');
    expect(store.getState().kept).toEqual({ state: 'notKept', why });
  });
});

describe('a store the browser closed', () => {
  it('is opened again with the next edit', async () => {
    const device = aDevice();
    const connections: unknown[] = [];
    const open = device.factory.open.bind(device.factory);
    vi.spyOn(device.factory, 'open').mockImplementation((...how) => {
      const request = open(...how);
      request.addEventListener('success', () => connections.push(request.result));
      return request;
    });
    const store = await openTabWithJob(device);
    for (const connection of connections) forceCloseDatabase(connection as typeof IDBDatabase);
    changeJob(store, { name: 'Team' });
    await store.flush();
    expect(store.getState().kept.state).toBe('kept');
    expect(await rowsOf(device.factory, 'documents')).toMatchObject([{ body: { name: 'Team' } }]);
  });
});
