import { describe, expect, it } from 'vitest';
import { aJobBody } from '@/tests/lib/stored/smallRegistry';
import { aDevice, changeJob, jobIn, openTab, openTabWithJob, rowsOf, writeRow } from './tabs';

describe('undo and redo', () => {
  it('go back and forth through the edits and say what they would do', async () => {
    const store = await openTabWithJob(aDevice());
    changeJob(store, { name: 'Team' });
    expect(store.getState()).toMatchObject({ undoLabel: 'Change job', canUndo: true, canRedo: false });
    expect(await store.actions.undo()).toEqual({
      state: 'moved',
      label: 'Change job',
      moved: [{ kind: 'job', id: expect.any(String), path: ['name'] }],
      entries: [],
    });
    expect(jobIn(store)?.name).toBe('Club order');
    expect(store.getState()).toMatchObject({ undoLabel: 'New job', redoLabel: 'Change job' });
    await store.actions.undo();
    expect(store.getState()).toMatchObject({ documents: [], undoLabel: null, canUndo: false });
    expect(await store.actions.undo()).toEqual({ state: 'nothing' });
    await store.actions.redo();
    await store.actions.redo();
    expect(jobIn(store)?.name).toBe('Team');
    expect(await store.actions.redo()).toEqual({ state: 'nothing' });
  });

  it('go on after a reload where they were', async () => {
    const device = aDevice();
    const before = await openTabWithJob(device);
    changeJob(before, { name: 'Team' });
    await before.actions.undo();
    before.close();
    const store = await openTab(device, 'here');
    expect(store.getState()).toMatchObject({ undoLabel: 'New job', redoLabel: 'Change job' });
    await store.actions.redo();
    expect(jobIn(store)?.name).toBe('Team');
  });

  it('take over in a tab of another day', async () => {
    const device = aDevice();
    const before = await openTabWithJob(device, 'yesterday');
    changeJob(before, { name: 'Team' });
    await before.flush();
    before.close();
    const store = await openTab(device, 'today');
    await store.actions.undo();
    await store.actions.undo();
    expect(store.getState().documents).toEqual([]);
    await store.actions.redo();
    await store.actions.redo();
    expect(jobIn(store)?.name).toBe('Team');
  });

  it('treat typing in one field as one step, until a second has passed', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    for (const name of ['T', 'Te', 'Tea']) {
      device.clock.now += 300;
      changeJob(store, { name }, 'job-1 name');
      await store.flush();
    }
    device.clock.now += 1001;
    changeJob(store, { name: 'Team' }, 'job-1 name');
    await store.actions.undo();
    expect(jobIn(store)?.name).toBe('Tea');
    await store.actions.undo();
    expect(jobIn(store)?.name).toBe('Club order');
  });

  it('treat typing faster than the store writes as one step too', async () => {
    const store = await openTabWithJob(aDevice());
    for (const name of ['T', 'Te', 'Tea', 'Team']) changeJob(store, { name }, 'job-1 name');
    await store.flush();
    expect(jobIn(store)?.name).toBe('Team');
    await store.actions.undo();
    expect(jobIn(store)?.name).toBe('Club order');
  });

  it('forget what was undone once something else is edited', async () => {
    const store = await openTabWithJob(aDevice());
    changeJob(store, { name: 'Team' });
    await store.actions.undo();
    changeJob(store, { most: 40 });
    await store.flush();
    expect(await store.actions.redo()).toEqual({ state: 'nothing' });
    expect(jobIn(store)).toEqual(aJobBody({ most: 40 }));
  });

  it('keep 200 steps and no more', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    for (let most = 1; most <= 205; most += 1) changeJob(store, { most });
    await store.flush();
    expect(await rowsOf(device.factory, 'steps')).toHaveLength(200);
    expect(await rowsOf(device.factory, 'contents')).toHaveLength(200);
  });

  it('pass over a step whose content can no longer be read, and say so once', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    changeJob(store, { name: 'Team' });
    await store.flush();
    await writeRow(device.factory, 'contents', { seq: 2, changes: 'lost' });
    expect(await store.actions.undo()).toEqual({ state: 'lost', label: 'Change job' });
    expect(jobIn(store)?.name).toBe('Team');
    expect(store.getState().undoLabel).toBe('New job');
  });

  it('bring a step of an earlier version up to today', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    changeJob(store, { name: 'Team' });
    await store.flush();
    const before = { version: 1, deleted: false, body: { name: 'Fair', copies: 38 } };
    const after = { version: 2, deleted: false, body: aJobBody({ name: 'Team' }) };
    await writeRow(device.factory, 'contents', {
      seq: 2,
      changes: [{ id: 'job-1', kind: 'job', before, after }],
    });
    await store.actions.undo();
    expect(jobIn(store)).toEqual({ name: 'Fair', lines: [{ id: 'first', quantity: 38 }] });
  });
});
