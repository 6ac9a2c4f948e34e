import { describe, expect, it } from 'vitest';
import { fillTheDisk } from './fullDisk';
import {
  aDevice,
  changeJob,
  jobIn,
  openTab,
  openTabWithJob,
  rowsOf,
  type SmallStore,
  writeRow,
} from './tabs';

const refill = (mL: number) => ({ kind: 'inkRefill', body: { day: '2026-11-03', mL } }) as const;
const takeBack = (entryId: string) => ({ kind: 'takeBack', body: { entryId } }) as const;
const refills = (store: SmallStore) => store.getState().entries.inkRefill.map(({ body }) => body.mL);
const firstRefill = (store: SmallStore) => store.getState().entries.inkRefill[0]?.id ?? '';

describe('an entry', () => {
  it('shows at once, and is there after a reload', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    expect(store.actions.note('Refill', [refill(70)])).toEqual({ state: 'shown' });
    expect(refills(store)).toEqual([70]);
    await store.flush();
    store.close();
    expect(refills(await openTab(device, 'here'))).toEqual([70]);
  });

  it('is known to a screen by one name before and after it is written', async () => {
    const store = await openTabWithJob(aDevice());
    store.actions.note('Refill', [refill(70)]);
    const shown = store.actions.firstId(firstRefill(store));
    await store.flush();
    expect(firstRefill(store)).not.toBe(shown);
    expect(store.actions.firstId(firstRefill(store))).toBe(shown);
    expect(store.actions.firstId('another')).toBe('another');
  });

  it('is counted by the device that wrote it', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    store.actions.note('Refills', [refill(70), refill(65)]);
    await store.flush();
    const id = store.getState().device?.id;
    expect(await rowsOf(device.factory, 'entries')).toMatchObject([
      { id: `${id}-1`, device: id, count: 1, at: 1_000_000, kind: 'inkRefill', version: 1 },
      { id: `${id}-2`, device: id, count: 2 },
    ]);
  });

  it('gets no number that another tab gives at the same moment', async () => {
    const device = aDevice();
    const [here, there] = [await openTabWithJob(device, 'here'), await openTab(device, 'there')];
    for (const mL of [10, 20, 30]) {
      here.actions.note('Refill', [refill(mL)]);
      there.actions.note('Refill', [refill(mL + 1)]);
    }
    await Promise.all([here.flush(), there.flush()]);
    const rows = (await rowsOf(device.factory, 'entries')) as readonly { count: number; device: string }[];
    expect(rows.map(({ count }) => count).toSorted((one, other) => one - other)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(new Set(rows.map((row) => row.device)).size).toBe(1);
  });

  it('that its schema refuses, or that takes back what nobody wrote, is refused with all that goes with it', async () => {
    const store = await openTabWithJob(aDevice());
    expect(
      store.actions.note(
        'Bad',
        [refill(-1), refill(5), takeBack('nobody-1')],
        [{ do: 'change', kind: 'job', id: 'job-1', to: (body) => ({ ...body, name: 'Team' }) }],
      ),
    ).toMatchObject({
      state: 'refused',
      findings: [
        { code: 'bodyInvalid', id: 'inkRefill' },
        { code: 'noSuchDocument', id: 'nobody-1' },
      ],
    });
    expect(refills(store)).toEqual([]);
    expect(jobIn(store)?.name).toBe('Club order');
  });

  it('leaves the lists of all other kinds the same, and its own while documents are edited', async () => {
    const store = await openTabWithJob(aDevice());
    store.actions.note('Refill', [refill(70)]);
    await store.flush();
    const before = store.getState();
    changeJob(store, { name: 'Team' });
    await store.flush();
    expect(store.getState().entries).toBe(before.entries);
    expect(store.getState().papers).toBe(before.papers);
    store.actions.note('Approve', [{ kind: 'approval', body: { artworkId: 'otter', version: 1 } }]);
    expect(store.getState().entries).not.toBe(before.entries);
    expect(store.getState().entries.inkRefill).toBe(before.entries.inkRefill);
    await store.flush();
  });

  it('is shown by another tab once it is written', async () => {
    const device = aDevice();
    const [here, there] = [await openTabWithJob(device, 'here'), await openTab(device, 'there')];
    here.actions.note('Refill', [refill(70)]);
    await here.flush();
    await expect.poll(() => refills(there)).toEqual([70]);
    await here.actions.undo();
    await expect.poll(() => refills(there)).toEqual([]);
  });

  it('that nothing here can read is kept, told, and never numbered over', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    store.actions.note('Refill', [refill(70)]);
    await store.flush();
    store.close();
    const later = {
      id: 'later000-1',
      kind: 'holiday',
      version: 1,
      device: 'later000',
      count: 1,
      at: 1,
      body: {},
    };
    await writeRow(device.factory, 'entries', later);
    const again = await openTab(device, 'here');
    expect(again.getState().unreadable).toMatchObject([
      { id: 'later000-1', kind: 'holiday', findings: [{ code: 'unknownKind' }], raw: later },
    ]);
    expect(refills(again)).toEqual([70]);
    again.actions.note('Refill', [refill(71)]);
    await again.flush();
    expect(await rowsOf(device.factory, 'entries')).toContainEqual(later);
  });
});

describe('entries with edits that belong to them', () => {
  it('are one step: kept together, undone together, done again together', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    store.actions.note(
      'Made',
      [refill(70)],
      [{ do: 'change', kind: 'job', id: 'job-1', to: (body) => ({ ...body, name: 'Made' }) }],
    );
    await store.flush();
    expect(await store.actions.undo()).toMatchObject({
      moved: [{ kind: 'job', id: 'job-1', path: ['name'] }],
      entries: [{ entry: { kind: 'inkRefill', body: { mL: 70 } }, counts: false }],
    });
    expect([jobIn(store)?.name, refills(store)]).toEqual(['Club order', []]);
    expect(await store.actions.redo()).toMatchObject({ entries: [{ counts: true }] });
    expect([jobIn(store)?.name, refills(store)]).toEqual(['Made', [70]]);
  });

  it('never melt into typing before or after them', async () => {
    const store = await openTabWithJob(aDevice());
    changeJob(store, { name: 'T' }, 'name');
    store.actions.note('Refill', [refill(70)]);
    store.actions.note('Refill', [refill(71)]);
    changeJob(store, { name: 'Te' }, 'name');
    await store.flush();
    const labels: unknown[] = [];
    for (
      let outcome = await store.actions.undo();
      outcome.state === 'moved';
      outcome = await store.actions.undo()
    )
      labels.push(outcome.label);
    expect(labels).toEqual(['Change job', 'Refill', 'Refill', 'Change job', 'New job']);
  });
});

describe('undo of an entry', () => {
  it('writes another that takes it back; redo takes that back; nothing written is ever changed', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    store.actions.note('Refill', [refill(70)]);
    await store.actions.undo();
    expect(refills(store)).toEqual([]);
    await store.actions.redo();
    expect(refills(store)).toEqual([70]);
    await store.actions.undo();
    expect(refills(store)).toEqual([]);
    const id = store.getState().device?.id;
    const rows = (await rowsOf(device.factory, 'entries')) as readonly { kind: string; body: unknown }[];
    expect(rows.map(({ kind, body }) => [kind, body])).toEqual([
      ['inkRefill', { day: '2026-11-03', mL: 70 }],
      ['takeBack', { entryId: `${id}-1` }],
      ['takeBack', { entryId: `${id}-2` }],
      ['takeBack', { entryId: `${id}-1` }],
    ]);
  });

  it('goes on after a reload, and lets an entry count again that the step itself had taken back', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    store.actions.note('Refill', [refill(70)]);
    await store.flush();
    store.actions.note('Take the refill back', [takeBack(firstRefill(store))]);
    await store.flush();
    expect(refills(store)).toEqual([]);
    store.close();
    const again = await openTab(device, 'here');
    expect(again.getState().undoLabel).toBe('Take the refill back');
    await again.actions.undo();
    expect(refills(again)).toEqual([70]);
  });

  it('of a taking back tells what counts again', async () => {
    const store = await openTabWithJob(aDevice());
    store.actions.note('Refill', [refill(70)]);
    await store.flush();
    store.actions.note('Take back', [takeBack(firstRefill(store))]);
    expect(await store.actions.undo()).toMatchObject({
      entries: [{ entry: { kind: 'inkRefill', body: { mL: 70 } }, counts: true }],
    });
    expect(await store.actions.redo()).toMatchObject({
      entries: [{ entry: { kind: 'inkRefill' }, counts: false }],
    });
  });

  it('reads steps as earlier builds wrote them, without entries', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    changeJob(store, { name: 'Team' });
    await store.flush();
    const contents = (await rowsOf(device.factory, 'contents')) as readonly object[];
    expect(contents.map((row) => Object.keys(row).sort())).toEqual([
      ['changes', 'seq'],
      ['changes', 'seq'],
    ]);
    expect(await store.actions.undo()).toMatchObject({ state: 'moved', entries: [] });
  });
});

describe('on a full disk', () => {
  it('an entry waits, told as not kept, and a retry writes it once', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const { makeRoom } = fillTheDisk();
    store.actions.note('Refill', [refill(70)]);
    changeJob(store, { name: 'Team' });
    await store.flush();
    expect(store.getState().kept).toEqual({ state: 'notKept', why: 'diskFull' });
    expect([refills(store), jobIn(store)?.name]).toEqual([[70], 'Team']);
    makeRoom();
    await store.actions.retry();
    expect(store.getState().kept).toMatchObject({ state: 'kept' });
    expect([refills(store), jobIn(store)?.name]).toEqual([[70], 'Team']);
    expect(await rowsOf(device.factory, 'entries')).toHaveLength(1);
    expect(store.getState().undoLabel).toBe('Change job');
  });

  it('what takes back an entry that still waits goes with it, by the number that one gets', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const { makeRoom } = fillTheDisk();
    store.actions.note('Refill', [refill(70)]);
    const shownAs = firstRefill(store);
    store.actions.note('Take it back', [takeBack(shownAs)]);
    await store.flush();
    expect(refills(store)).toEqual([]);
    makeRoom();
    await store.actions.retry();
    expect(refills(store)).toEqual([]);
    const id = store.getState().device?.id;
    expect(await rowsOf(device.factory, 'entries')).toMatchObject([{}, { body: { entryId: `${id}-1` } }]);
  });

  it('an entry known by the number it had while it waited can be taken back once it has another', async () => {
    const store = await openTabWithJob(aDevice());
    store.actions.note('Refill', [refill(70)]);
    const shownAs = firstRefill(store);
    await store.flush();
    expect(firstRefill(store)).not.toBe(shownAs);
    expect(store.actions.note('Take it back', [takeBack(shownAs)])).toEqual({ state: 'shown' });
    expect(refills(store)).toEqual([]);
    await store.flush();
    expect(refills(store)).toEqual([]);
  });

  it('a taking back that was undone in memory is done again of the entry that was written meanwhile', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const { makeRoom } = fillTheDisk();
    store.actions.note('Refill', [refill(70)]);
    store.actions.note('Take it back', [takeBack(firstRefill(store))]);
    await store.actions.undo();
    expect(refills(store)).toEqual([70]);
    makeRoom();
    await store.actions.retry();
    await store.actions.redo();
    await store.flush();
    expect(refills(store)).toEqual([]);
    expect(refills(await openTab(device, 'there'))).toEqual([]);
  });

  it('an entry that waits is undone and done again in memory', async () => {
    const store = await openTabWithJob(aDevice());
    const { makeRoom } = fillTheDisk();
    store.actions.note('Refill', [refill(70)]);
    expect(await store.actions.undo()).toMatchObject({ state: 'moved', entries: [{ counts: false }] });
    expect(refills(store)).toEqual([]);
    await store.actions.redo();
    expect(refills(store)).toEqual([70]);
    makeRoom();
    await store.actions.retry();
    expect(refills(store)).toEqual([70]);
  });
});

describe('a clock that was set back', () => {
  it('is told while it stands more than a minute before the last entry of this device', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    store.actions.note('Refill', [refill(70)]);
    await store.flush();
    expect(store.getState().clockBehind).toBeNull();
    device.clock.now = 1_000_000 - 60_000;
    changeJob(store, { name: 'One' });
    expect(store.getState().clockBehind).toBeNull();
    device.clock.now = 1_000_000 - 60_001;
    changeJob(store, { name: 'Two' });
    expect(store.getState().clockBehind).toEqual({ deviceClock: 939_999, lastEntry: 1_000_000 });
    device.clock.now = 1_000_001;
    changeJob(store, { name: 'Three' });
    expect(store.getState().clockBehind).toBeNull();
    await store.flush();
  });

  it('changes nothing in the order of what is noted', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    store.actions.note('Refill', [refill(70)]);
    await store.flush();
    device.clock.now = 5;
    store.actions.note('Refill', [refill(71)]);
    expect(refills(store)).toEqual([70, 71]);
    await store.flush();
    store.close();
    expect(refills(await openTab(device, 'here'))).toEqual([70, 71]);
  });
});
