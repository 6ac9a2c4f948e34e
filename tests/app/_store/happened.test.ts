import { describe, expect, it } from 'vitest';
import { aDevice, openTab, openTabWithJob, rowsOf, type SmallStore } from './tabs';

const refill = (mL: number) => ({ kind: 'inkRefill', body: { day: '2026-11-03', mL } }) as const;
const refills = (store: SmallStore) => store.getState().entries.inkRefill.map(({ body }) => body.mL);
const offer = (text = 'Twenty shirts') =>
  ({
    kind: 'offer',
    about: { kind: 'job', id: 'job-1' },
    series: 'job-1',
    body: (number: { readonly count: number; readonly letter: string | null }) => ({ number, text }),
  }) as const;

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

  it('is taken back by undo and counts again after redo, while nothing written is ever changed', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    store.actions.note('Refill', [refill(70)]);
    expect(await store.actions.undo()).toMatchObject({
      state: 'moved',
      label: 'Refill',
      entries: [{ counts: false, entry: { kind: 'inkRefill' } }],
    });
    expect(refills(store)).toEqual([]);
    await store.actions.redo();
    expect(refills(store)).toEqual([70]);
    await store.actions.undo();
    expect(refills(store)).toEqual([]);
    expect(await rowsOf(device.factory, 'entries')).toHaveLength(4);
  });
});

describe('a paper', () => {
  it('is numbered, kept with what it says, and withdrawn by undo', async () => {
    const store = await openTabWithJob(aDevice());
    const issued = await store.actions.issue('Offer', offer());
    const letter = store.getState().device?.letter;
    expect(issued).toMatchObject({ state: 'issued', paper: { number: { count: 1, letter } } });
    expect(store.getState().papers.offer).toMatchObject([
      { withdrawn: false, body: { text: 'Twenty shirts' } },
    ]);
    await store.actions.undo();
    expect(store.getState().papers.offer).toMatchObject([{ withdrawn: true }]);
    expect(await store.actions.issue('Offer', offer())).toMatchObject({
      paper: { number: { count: 2, letter } },
    });
  });
});
