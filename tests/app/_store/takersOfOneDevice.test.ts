import { describe, expect, it } from 'vitest';
import { aDevice, copyOf, openTab, openTabWithJob, rowsOf, type SmallStore } from './tabs';

/* What an undone arrival or a replacing takes out of force is out on that device alone. */

const refill = async (store: SmallStore, mL: number) => {
  store.actions.note('Refill', [{ kind: 'inkRefill', body: { day: '2026-11-03', mL } }]);
  await store.flush();
};
const refills = (store: SmallStore) =>
  store
    .getState()
    .entries.inkRefill.map(({ body }) => body.mL)
    .toSorted((one, other) => one - other);
const take = async (store: SmallStore, file: Blob, mode: 'beside' | 'replace' = 'beside') => {
  const look = await store.actions.lookAtCopy(file);
  if (look.state !== 'copy') throw new Error(JSON.stringify(look.why));
  expect((await store.actions.takeCopy('In', look, { mode })).state).toBe('replaced');
  return look.plan;
};
const laptopAndPhone = async () => {
  const laptop = await openTabWithJob(aDevice());
  const before = await copyOf(laptop);
  await refill(laptop, 70);
  const device = aDevice();
  return { laptop, before, device, phone: await openTab(device, 'phone'), copy: await copyOf(laptop) };
};

describe('a copy of a device where an arrival was undone', () => {
  it('takes nothing out of force where what had arrived came from', async () => {
    const { laptop, phone, copy } = await laptopAndPhone();
    await take(phone, copy);
    await phone.actions.undo();
    const plan = await take(laptop, await copyOf(phone));
    expect(refills(laptop)).toEqual([70]);
    expect(plan.counts).toMatchObject({ newEntries: {}, noLongerCounting: {} });
  });

  it('shows the same on an empty device, and what was done again', async () => {
    const { phone, copy } = await laptopAndPhone();
    await refill(phone, 5);
    await take(phone, copy);
    await phone.actions.undo();
    const empty = await openTab(aDevice(), 'empty');
    await take(empty, await copyOf(phone), 'replace');
    expect(refills(empty)).toEqual([5]);
    await phone.actions.redo();
    await take(empty, await copyOf(phone));
    expect(refills(empty)).toEqual([5, 70]);
  });
});

describe('a copy of a device where another took the place of everything', () => {
  it('takes nothing out of force on other devices, and shows the same on an empty one', async () => {
    const { laptop, before, phone, copy } = await laptopAndPhone();
    await take(phone, copy);
    await refill(phone, 5);
    await take(phone, before, 'replace');
    expect(refills(phone)).toEqual([]);
    const plan = await take(laptop, await copyOf(phone));
    expect(refills(laptop)).toEqual([70]);
    expect(plan.counts.noLongerCounting).toEqual({});
    const empty = await openTab(aDevice(), 'empty');
    await take(empty, await copyOf(phone));
    expect(refills(empty)).toEqual([]);
    // What was replaced comes in again, and the preview says so.
    expect((await take(phone, copy)).counts.newEntries).toEqual({ inkRefill: 1 });
    expect(refills(phone)).toEqual([70]);
  });

  it('holds all again once that was undone, and not once it was done again', async () => {
    const { before, phone, copy } = await laptopAndPhone();
    await take(phone, copy);
    await take(phone, before, 'replace');
    await phone.actions.undo();
    const empty = await openTab(aDevice(), 'empty');
    await take(empty, await copyOf(phone), 'replace');
    expect(refills(empty)).toEqual([70]);
    await phone.actions.redo();
    await take(empty, await copyOf(phone), 'replace');
    expect(refills(empty)).toEqual([]);
    await empty.actions.undo();
    expect(refills(empty)).toEqual([70]);
  });
});

describe('what a maker took back by hand', () => {
  it('is taken back on other devices, is told before, and counts again by undo', async () => {
    const { laptop, device, phone, copy } = await laptopAndPhone();
    await take(phone, copy);
    const [id = ''] = phone.getState().entries.inkRefill.map((entry) => entry.id);
    phone.actions.note('Take back', [{ kind: 'takeBack', body: { entryId: id } }]);
    await phone.flush();
    expect(await rowsOf(device.factory, 'entries')).toHaveLength(2);
    const plan = await take(laptop, await copyOf(phone));
    expect(plan.counts).toMatchObject({ newEntries: {}, noLongerCounting: { inkRefill: 1 } });
    expect(refills(laptop)).toEqual([]);
    await laptop.actions.undo();
    expect(refills(laptop)).toEqual([70]);
  });
});
