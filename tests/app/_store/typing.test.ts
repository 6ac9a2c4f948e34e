import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { PageEvents } from '@/app/_tab/watchPage';
import { eventually } from '@/tests/tools/eventually';
import { aDevice, changeJob, type Device, jobIn, openTab, openTabWithJob, rowsOf } from './tabs';

const KEY = 'job-1 name';
const keptNames = async (device: Device) =>
  (await rowsOf(device.factory, 'documents')).map((row) => (row as { body: { name: string } }).body.name);

/** Types letter by letter; a read between two letters comes after any write that has begun. */
async function typed(store: Parameters<typeof changeJob>[0], device: Device, text: string) {
  const seen = [];
  for (let length = 1; length <= text.length; length += 1) {
    changeJob(store, { name: text.slice(0, length) }, KEY);
    seen.push(...(await keptNames(device)));
  }
  return seen;
}

// A busy machine takes longer between two letters than a person: only the pause after them is by this clock.
beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] }));
afterEach(() => void vi.useRealTimers());

describe('what is typed into one field', () => {
  it('shows with every key, and no half of it is kept', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    expect(new Set(await typed(store, device, 'Team'))).toEqual(new Set(['Club order']));
    expect(jobIn(store)?.name).toBe('Team');
    expect(store.getState().kept).toEqual({ state: 'keeping' });
  });

  it('is not kept by halves where an earlier edit is still being written', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    store.actions.edit('New', [{ do: 'add', kind: 'blank', id: 'shirt', body: { name: 'Shirt' } }]);
    changeJob(store, { name: 'T' }, KEY);
    await eventually(async () => expect(await keptNames(device)).toEqual(['Club order', 'Shirt']));
    changeJob(store, { name: 'Te' }, KEY);
    expect(await keptNames(device)).toEqual(['Club order', 'Shirt']);
    expect(store.getState().kept).toEqual({ state: 'keeping' });
  });

  it('is kept without anybody waiting for it once no more is typed', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    await typed(store, device, 'Team');
    vi.advanceTimersByTime(400);
    await eventually(() => expect(store.getState().kept).toMatchObject({ state: 'kept' }));
    expect(await keptNames(device)).toEqual(['Team']);
  });

  it.each(['fieldLeft', 'leaving'] as const)('is kept at once on %s', async (event) => {
    const device = aDevice();
    const page: Partial<PageEvents> = {};
    const store = await openTabWithJob(device, 'here', {
      watchPage: (on) => {
        Object.assign(page, on);
        return () => undefined;
      },
    });
    changeJob(store, { name: 'Team' }, KEY);
    page[event]?.();
    changeJob(store, { name: 'Team B' }, 'job-1 other');
    await eventually(async () => expect(await keptNames(device)).toEqual(['Team']));
  });

  it('is kept before an edit that follows it, in their order', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    await typed(store, device, 'Team');
    store.actions.edit('New', [{ do: 'add', kind: 'blank', id: 'shirt', body: { name: 'Shirt' } }]);
    await store.flush();
    expect(await keptNames(device)).toEqual(['Team', 'Shirt']);
    await store.actions.undo();
    expect(jobIn(store)?.name).toBe('Team');
  });

  it('is one step of undo, also where a pause within it wrote the first half', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    changeJob(store, { name: 'T' }, KEY);
    await store.flush();
    for (const name of ['Te', 'Tea', 'Team']) {
      device.clock.now += 600;
      changeJob(store, { name }, KEY);
    }
    await store.actions.undo();
    expect(jobIn(store)?.name).toBe('Club order');
    await store.actions.redo();
    expect(jobIn(store)?.name).toBe('Team');
  });
});

describe('a page on which something is not kept', () => {
  const tabState = async (options: Parameters<Device['tab']>[1] = {}) => {
    const holds: boolean[] = [];
    const store = await openTabWithJob(aDevice(), 'here', {
      holdPage: (isHeld) => void holds.push(isHeld),
      ...options,
    });
    return { store, holds, isHeld: () => holds.at(-1) };
  };

  it('is held while something is typed, and let go once it is kept', async () => {
    const { store, isHeld } = await tabState();
    expect(isHeld()).toBe(false);
    changeJob(store, { name: 'T' }, KEY);
    expect(isHeld()).toBe(true);
    await store.flush();
    expect(isHeld()).toBe(false);
  });

  it('is held while undo is being written', async () => {
    const { store, holds, isHeld } = await tabState();
    holds.length = 0;
    await store.actions.undo();
    expect(holds).toContain(true);
    expect(isHeld()).toBe(false);
  });

  it('is held for as long as the disk has no room', async () => {
    const { store, isHeld } = await tabState();
    const { fillTheDisk } = await import('./fullDisk');
    const { makeRoom } = fillTheDisk();
    changeJob(store, { name: 'Team' });
    await store.flush();
    expect(store.getState().kept).toMatchObject({ state: 'notKept' });
    expect(isHeld()).toBe(true);
    makeRoom();
    await store.actions.retry();
    expect(isHeld()).toBe(false);
  });

  it('is held where nothing can be kept at all, once something was done on it', async () => {
    const holds: boolean[] = [];
    const nothing = { indexedDB: undefined };
    const store = await openTab(aDevice(), 'here', {
      database: () => nothing,
      holdPage: (isHeld) => void holds.push(isHeld),
    });
    expect(holds.at(-1)).toBe(false);
    store.actions.edit('New', [{ do: 'add', kind: 'blank', id: 'shirt', body: { name: 'Shirt' } }]);
    await store.flush();
    expect(holds.at(-1)).toBe(true);
  });
});
