import { describe, expect, it } from 'vitest';
import type { Arriving } from '@/app/_transactions/arrive';
import { storedWords } from '@/app/_words/store/storedWords';
import type { Entry } from '@/shared/schemas/happened';
import {
  aDevice,
  bringBack,
  copyOf,
  type Device,
  openTabWithJob,
  rowsOf,
  type SmallStore,
  writeRow,
} from './tabs';

const refill = (mL: number) => ({ kind: 'inkRefill', body: { day: '2026-11-03', mL } }) as const;
const none: Arriving = { drafts: [], papers: [], entries: [], unreadable: [], files: [], exchanged: [] };
const entriesOf = async (device: Device) => (await rowsOf(device.factory, 'entries')) as readonly Entry[];
const note = async (store: SmallStore, mL: number) => {
  store.actions.note('Refill', [refill(mL)]);
  await store.flush();
};
const bringIn = (store: SmallStore, entries: readonly Entry[]) =>
  store.actions.arrive('Bring in', { ...none, entries }, { mode: 'beside' });
const refills = (store: SmallStore) =>
  store
    .getState()
    .entries.inkRefill.map(({ body }) => body.mL)
    .toSorted((one, other) => one - other);

/** A device, and another that is a copy of all that the first kept. */
const twins = async () => {
  const [device, copy] = [aDevice(), aDevice()];
  const store = await openTabWithJob(device);
  await note(store, 10);
  const twin = await openTabWithJob(copy);
  for (const table of ['entries', 'meta'] as const) {
    for (const row of await rowsOf(device.factory, table)) await writeRow(copy.factory, table, row);
  }
  twin.close();
  return { device, store, copy, twin: await openTabWithJob(copy, 'again') };
};

describe('a browser profile that was copied', () => {
  it('is found out by numbers it never gave, and counts under another id and letter from then on', async () => {
    const { device, store, copy, twin } = await twins();
    await note(twin, 20);
    const before = store.getState().device;
    expect(await bringIn(store, await entriesOf(copy))).toEqual({
      state: 'arrived',
      clashing: [],
      isRenamed: true,
    });
    const after = store.getState().device;
    expect(after?.id).not.toBe(before?.id);
    expect(after?.letter).not.toBe(before?.letter);
    await note(store, 30);
    expect(refills(store)).toEqual([10, 20, 30]);
    const latest = (await entriesOf(device)).find(({ body }) => (body as { mL: number }).mL === 30);
    expect(latest).toMatchObject({ device: after?.id, count: 1 });
    // Both go on: what each writes now can never clash.
    await note(twin, 40);
    expect(await bringIn(twin, await entriesOf(device))).toMatchObject({ clashing: [], isRenamed: false });
    expect(refills(twin)).toEqual([10, 20, 30, 40]);
  });

  it('is found out by one number given twice: what is here stays, what came is set aside', async () => {
    const { device, store, copy, twin } = await twins();
    await note(store, 30);
    await note(twin, 20);
    const outcome = await bringIn(store, await entriesOf(copy));
    expect(outcome).toMatchObject({ isRenamed: true, clashing: [{ kind: 'inkRefill' }] });
    expect(refills(store)).toEqual([10, 30]);
    expect(await rowsOf(device.factory, 'aside')).toMatchObject([{ raw: { body: { mL: 20 } } }]);
  });

  it('is told of with the letter of the next numbers, where its copy is taken', async () => {
    const { store, twin } = await twins();
    await note(twin, 20);
    const { file } = await twin.actions.makeCopy('everything');
    const before = store.getState().device?.letter;
    const taken = await bringBack(store, file);
    const { letter } = store.getState().device ?? {};
    expect(letter).not.toBe(before);
    expect(taken).toEqual({ state: 'replaced', newLetter: letter });
  });

  it('is not suspected because of an old copy of one’s own', async () => {
    const { device, store } = await twins();
    const old = await entriesOf(device);
    await note(store, 30);
    expect(await bringIn(store, old)).toMatchObject({ isRenamed: false });
  });
});

/** The second device brings in what the first keeps. */
const copyTo = async (from: SmallStore, to: SmallStore) => bringBeside(to, await copyOf(from));
const bringBeside = async (store: SmallStore, file: Blob) => {
  const look = await store.actions.lookAtCopy(file);
  if (look.state !== 'copy') throw new Error('no copy');
  return store.actions.takeCopy('In', look, { mode: 'beside' });
};
const offer = {
  kind: 'offer',
  about: { kind: 'job', id: 'job-1' },
  series: 'job-1',
  body: (number: { count: number; letter: string | null }) => ({ number, text: 'Twelve shirts' }),
} as const;
const takenNumbers = (store: SmallStore) =>
  store
    .getState()
    .unreadable.filter(({ findings }) => findings.some(({ code }) => code === 'numberTaken'))
    .map(({ kind }) => kind)
    .toSorted();

describe('what came with a number that is taken here', () => {
  it('takes back nothing of ours, and is shown with the reason', async () => {
    const { store, twin } = await twins();
    await note(store, 70);
    await note(twin, 33);
    await twin.actions.undo();
    await twin.actions.redo();
    await copyTo(twin, store);
    expect(refills(store)).toEqual([10, 70]);
    expect(takenNumbers(store)).toEqual(['inkRefill', 'takeBack', 'takeBack']);
    expect(storedWords({ code: 'numberTaken' }, null)).toContain('came with a number that is taken here');
    // Once more changes nothing.
    await copyTo(twin, store);
    expect(refills(store)).toEqual([10, 70]);
    expect(takenNumbers(store)).toHaveLength(3);
  });

  it('keeps its paper out with its issuing, which would look withdrawn, and the next number goes beyond it', async () => {
    const { store, twin } = await twins();
    // The issuing gets the count after that of the paper.
    await note(store, 70);
    await note(store, 80);
    await twin.actions.issue('Offer', offer);
    await copyTo(twin, store);
    expect(store.getState().papers.offer).toEqual([]);
    expect(takenNumbers(store)).toEqual(['issuing', 'offer']);
    expect(await store.actions.issue('Offer', offer)).toMatchObject({ paper: { number: { count: 2 } } });
  });

  it('does not come to count on a third device, and what was taken back here stays so there', async () => {
    const { store, twin } = await twins();
    await note(store, 70);
    await note(twin, 33);
    await twin.actions.undo();
    await copyTo(twin, store);
    const third = await openTabWithJob(aDevice());
    await copyTo(store, third);
    expect(refills(third)).toEqual([10, 70]);
    // First the arrival is undone, then the refill.
    await store.actions.undo();
    await store.actions.undo();
    expect(refills(store)).toEqual([10]);
    const fourth = await openTabWithJob(aDevice());
    await copyTo(store, fourth);
    expect(refills(fourth)).toEqual([10]);
    await copyTo(store, twin);
    expect(refills(twin)).toEqual([10]);
  });
});

describe('an entry with a zero below nothing', () => {
  it('that comes back in a copy, where it is a plain 0, is the same entry', async () => {
    const store = await openTabWithJob(aDevice());
    const item = { kind: 'blank', blankId: 'shirt', size: 'M', lot: null } as const;
    const said = { place: { kind: 'home' }, grade: 'first', quantity: -0, cause: 'used' } as const;
    store.actions.note('Used', [
      { kind: 'stockMove', body: { ...said, item, reference: null, unitCost: null } },
    ]);
    await store.flush();
    const before = store.getState().device;
    await copyTo(store, store);
    expect(store.getState().device).toEqual(before);
    expect(takenNumbers(store)).toEqual([]);
  });
});

describe('a store that lost its entries', () => {
  it('goes on counting where it was, so that no number is used twice', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    await note(store, 10);
    await note(store, 20);
    store.close();
    const db = await new Promise<IDBDatabase>((resolve) => {
      const request = device.factory.open('documents') as unknown as IDBOpenDBRequest;
      request.onsuccess = () => resolve(request.result);
    });
    await new Promise((resolve) => {
      const transaction = db.transaction('entries', 'readwrite');
      transaction.objectStore('entries').clear();
      transaction.oncomplete = resolve;
    });
    db.close();
    const again = await openTabWithJob(device, 'again');
    await note(again, 30);
    expect(await entriesOf(device)).toMatchObject([{ count: 3, body: { mL: 30 } }]);
  });
});
