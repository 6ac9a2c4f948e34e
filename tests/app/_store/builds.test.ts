import { describe, expect, it, vi } from 'vitest';
import { backendTables } from '@/app/_backend/backend';
import type { StoreLayout } from '@/app/_backend/deviceBackend';
import { eventually } from '@/tests/tools/eventually';
import { aDevice, changeJob, jobIn, nativeOpen, openTab, openTabWithJob, rowsOf } from './tabs';

/** What a later build brings: one table more. */
const later: StoreLayout = { version: 50, tables: { ...backendTables, drawers: 'id' } };

describe('a later build', () => {
  it('takes over the store from a tab of an earlier one, which closes it and says so', async () => {
    const device = aDevice();
    const old = await openTabWithJob(device, 'old');
    const next = await openTab(device, 'new', { layout: later });
    expect(jobIn(next)?.name).toBe('Club order');
    expect(old.getState().kept).toEqual({ state: 'notKept', why: 'newerTabOpen' });
    changeJob(old, { name: 'Team' });
    await old.flush();
    expect(old.getState().kept).toEqual({ state: 'notKept', why: 'newerTabOpen' });
    expect(jobIn(old)?.name).toBe('Team');
    await old.actions.retry();
    expect(old.getState()).toMatchObject({ status: 'ready', kept: { state: 'notKept', why: 'newerStore' } });
    expect(jobIn(old)?.name).toBe('Team');
    expect(await rowsOf(device.factory, 'documents')).toMatchObject([{ body: { name: 'Club order' } }]);
  });

  it('says at once that an old tab holds the store, and goes on by itself when that closes', async () => {
    const device = aDevice();
    (await openTabWithJob(device, 'old')).close();
    const deafTab = await nativeOpen(device.factory);
    const next = device.tab('new', { layout: later });
    void next.open();
    await eventually(() =>
      expect(next.getState()).toMatchObject({ status: 'opening', waitingFor: 'otherTab' }),
    );
    deafTab.close();
    await eventually(() => expect(next.getState().status).toBe('ready'));
    expect(jobIn(next)?.name).toBe('Club order');
  });

  it('says within five seconds that it waits, even when the browser tells nothing', async () => {
    vi.useFakeTimers();
    const device = aDevice();
    const silent = Object.assign(device.factory, { open: () => new EventTarget() });
    const store = device.tab('new', {
      database: () => ({ indexedDB: silent as unknown as IDBFactory }),
    });
    void store.open();
    await vi.advanceTimersByTimeAsync(3900);
    expect(store.getState()).toMatchObject({ status: 'opening', waitingFor: 'storage' });
    await vi.advanceTimersByTimeAsync(1000);
    expect(store.getState()).toMatchObject({ status: 'opening', waitingFor: 'otherTab' });
    vi.useRealTimers();
  });
});

describe('an earlier build', () => {
  it('does not open a newer store, says so, and leaves it as it is', async () => {
    const device = aDevice();
    (await openTabWithJob(device, 'new', { layout: later })).close();
    const store = await openTab(device, 'old');
    expect(store.getState()).toMatchObject({ status: 'failed', why: 'newerStore', documents: [] });
    expect(changeJob(store, { name: 'Team' })).toEqual({ state: 'notOpen' });
    const db = await nativeOpen(device.factory);
    expect([db.version, db.objectStoreNames.contains('drawers')]).toEqual([50, true]);
    db.close();
  });
});

describe('a store that cannot be opened', () => {
  it('is told, never replaced by an empty one, and opened when tried again', async () => {
    const device = aDevice();
    (await openTabWithJob(device)).close();
    const open = vi.spyOn(device.factory, 'open').mockImplementation(() => {
      throw new DOMException('Internal error opening backing store.', 'UnknownError');
    });
    const store = await openTab(device, 'here');
    expect(store.getState()).toMatchObject({ status: 'failed', why: 'cannotOpen' });
    open.mockRestore();
    await store.actions.retry();
    expect(store.getState().status).toBe('ready');
    expect(jobIn(store)?.name).toBe('Club order');
  });
});
