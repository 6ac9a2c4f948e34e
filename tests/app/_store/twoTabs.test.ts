import { describe, expect, it } from 'vitest';
import { aJobBody, smallJobSchema, smallRegistry } from '@/tests/lib/stored/smallRegistry';
import { eventually } from '@/tests/tools/eventually';
import { fillTheDisk } from './fullDisk';
import { aDevice, changeJob, jobIn, openTab, openTabWithJob, rowsOf } from './tabs';

/** Opens two tabs on one job; neither hears of the other until it writes. */
const twoTabs = async () => {
  const device = aDevice();
  const deaf = { openMessages: () => ({ tell: () => undefined, close: () => undefined }) };
  const here = await openTabWithJob(device, 'here', deaf);
  const there = await openTab(device, 'there', deaf);
  return { device, here, there };
};

describe('two tabs', () => {
  it('see each other’s edits', async () => {
    const device = aDevice();
    const here = await openTabWithJob(device);
    const there = await openTab(device, 'there');
    changeJob(here, { name: 'Team' });
    await eventually(() => expect(jobIn(there)?.name).toBe('Team'));
    expect(there.getState().undoLabel).toBe('Change job');
  });

  it('lose neither of two edits of different fields', async () => {
    const { device, here, there } = await twoTabs();
    changeJob(here, { name: 'Team' });
    await here.flush();
    changeJob(there, { most: 40 });
    await there.flush();
    expect(jobIn(there)).toEqual(aJobBody({ name: 'Team', most: 40 }));
    expect(there.getState().overwritten).toEqual([]);
    expect(await rowsOf(device.factory, 'documents')).toMatchObject([{ revision: 3 }]);
  });

  it('lose neither of two edits made in the same moment', async () => {
    const { device, here, there } = await twoTabs();
    for (let quantity = 1; quantity <= 20; quantity += 1) {
      changeJob(here, { most: quantity });
      changeJob(there, (body) => ({
        ...body,
        lines: [...body.lines, { id: `line-${quantity}`, quantity }],
      }));
    }
    await Promise.all([here.flush(), there.flush()]);
    const job = jobIn(await openTab(device, 'third'));
    expect(job?.most).toBe(20);
    expect(job?.lines).toHaveLength(21);
  });

  it('let the later write of one field stand, tell it, and bring the other value back by undo', async () => {
    const { here, there } = await twoTabs();
    changeJob(here, { name: 'Team' });
    await here.flush();
    changeJob(there, { name: 'Fair' });
    await there.flush();
    expect(jobIn(there)?.name).toBe('Fair');
    expect(there.getState().overwritten).toEqual([{ id: 'job-1', kind: 'job', path: ['name'] }]);
    there.actions.acknowledgeOverwritten();
    expect(there.getState().overwritten).toEqual([]);
    await there.actions.undo();
    expect(jobIn(there)?.name).toBe('Team');
  });

  it('undo their own edits only, and only the fields of the step', async () => {
    const { here, there } = await twoTabs();
    changeJob(here, { name: 'Team' });
    await here.flush();
    changeJob(there, { most: 40 });
    await there.flush();
    await here.actions.undo();
    expect(jobIn(here)).toEqual(aJobBody({ most: 40 }));
    await here.actions.redo();
    expect(jobIn(here)).toEqual(aJobBody({ name: 'Team', most: 40 }));
  });

  it('do not undo an edit of the other that fell into the typing of one field', async () => {
    const { here, there } = await twoTabs();
    changeJob(here, { name: 'Te' }, 'name');
    await here.flush();
    changeJob(there, { most: 40 });
    await there.flush();
    changeJob(here, { name: 'Team' }, 'name');
    await here.flush();
    await here.actions.undo();
    await here.actions.undo();
    expect(jobIn(here)).toEqual(aJobBody({ most: 40 }));
  });

  it('bring back by redo what the other had set when an undo overwrote it', async () => {
    const { here, there } = await twoTabs();
    changeJob(here, { name: 'Team' });
    await here.flush();
    changeJob(there, { name: 'Fair' });
    await there.flush();
    await here.actions.undo();
    expect(jobIn(here)?.name).toBe('Club order');
    await here.actions.redo();
    expect(jobIn(here)?.name).toBe('Fair');
  });

  it('leave deleted what the other deleted when an older edit is undone', async () => {
    const { here, there } = await twoTabs();
    changeJob(here, { name: 'Team' });
    await here.flush();
    there.actions.edit('Delete', [{ do: 'delete', kind: 'job', id: 'job-1' }]);
    await there.flush();
    await here.actions.undo();
    expect(jobIn(here)).toBeUndefined();
    await there.actions.undo();
    expect(jobIn(there)?.name).toBe('Club order');
  });

  it('bring back what one deleted while the other typed, and tell', async () => {
    const { here, there } = await twoTabs();
    here.actions.edit('Delete', [{ do: 'delete', kind: 'job', id: 'job-1' }]);
    await here.flush();
    changeJob(there, { name: 'Team' });
    await there.flush();
    expect(jobIn(there)?.name).toBe('Team');
    expect(there.getState().overwritten).toEqual([{ id: 'job-1', kind: 'job', path: [] }]);
  });

  it('take one side whole where both edits together could not be read', async () => {
    const device = aDevice();
    const schema = smallJobSchema.refine(
      ({ lines, most = Number.POSITIVE_INFINITY }) =>
        lines.reduce((sum, { quantity }) => sum + quantity, 0) <= most,
    );
    const registry = { ...smallRegistry, job: { ...smallRegistry.job, schema } };
    const here = await openTabWithJob(device, 'here', { registry });
    const there = await openTab(device, 'there', {
      registry,
      openMessages: () => ({ tell: () => undefined, close: () => undefined }),
    });
    changeJob(here, { lines: [{ id: 'shirts', quantity: 60 }] });
    await here.flush();
    changeJob(there, { most: 40 });
    await there.flush();
    expect(jobIn(there)).toEqual(aJobBody({ most: 40 }));
    await there.actions.undo();
    expect(jobIn(there)).toEqual(aJobBody({ lines: [{ id: 'shirts', quantity: 60 }] }));
  });

  it('read everything again when a tab comes back into view', async () => {
    const device = aDevice();
    const here = await openTabWithJob(device, 'here', {
      openMessages: () => ({ tell: () => undefined, close: () => undefined }),
    });
    let show = (): void => undefined;
    const there = await openTab(device, 'there', {
      openMessages: () => ({ tell: () => undefined, close: () => undefined }),
      watchPage: ({ shown }) => {
        show = shown;
        return () => undefined;
      },
    });
    changeJob(here, { name: 'Team' });
    await here.flush();
    show();
    await eventually(() => expect(jobIn(there)?.name).toBe('Team'));
  });
});

describe('an example that one tab could not keep', () => {
  it('is dropped where another tab has begun meanwhile: nothing is written over, nothing noted twice', async () => {
    const examples = {
      label: 'Example',
      load: async () => [{ kind: 'job', id: 'job-1', body: aJobBody() }] as const,
      loadEntries: async () => [{ kind: 'inkRefill', body: { day: '2026-11-03', mL: 70 } }] as const,
    };
    const device = aDevice();
    const { makeRoom } = fillTheDisk();
    const one = await openTab(device, 'one', { examples });
    makeRoom();
    const other = await openTab(device, 'other', { examples });
    changeJob(other, { name: 'Mine' });
    await other.flush();
    changeJob(one, { most: 40 });
    await one.actions.retry();
    expect(one.getState()).toMatchObject({ kept: { state: 'kept' }, overwritten: [] });
    expect(await rowsOf(device.factory, 'documents')).toMatchObject([{ body: { name: 'Mine', most: 40 } }]);
    expect(await rowsOf(device.factory, 'entries')).toHaveLength(1);
  });
});
