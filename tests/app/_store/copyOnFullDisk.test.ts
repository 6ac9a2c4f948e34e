import { expect, it } from 'vitest';
import type { CopyLook } from '@/app/_store/copies/copyActions';
import type { Tap } from '@/shared/schemas/stallEvents';
import { fillTheDisk } from './fullDisk';
import { aDevice, openTab, openTabWithJob, rowsOf, type SmallStore } from './tabs';

/** Another device counted: twenty sales, each an entry. */
async function aCountFile(): Promise<Blob> {
  const store = await openTabWithJob(aDevice());
  const sale: Tap = {
    ...{ what: 'sale', goods: { jobId: 'job-1', lineId: 'fern', size: 'M' }, minor: 2800, pay: 'cash' },
  };
  for (let at = 0; at < 20; at += 1) {
    const body = { stallDayId: 'fair', planId: 'plan', currency: 'USD', tap: sale };
    expect(store.actions.note('Fern M, 28', [{ kind: 'stallTap', body }]).state).toBe('shown');
  }
  await store.flush();
  return (await store.actions.makeCopy('everything')).file;
}

const looked = async (store: SmallStore, file: Blob): Promise<Extract<CopyLook, { state: 'copy' }>> => {
  const look = await store.actions.lookAtCopy(file);
  if (look.state !== 'copy') throw new Error(JSON.stringify(look.why));
  return look;
};

/** What a count file leaves on a device, table by table. */
const allRows = async ({ factory }: ReturnType<typeof aDevice>) => ({
  documents: await rowsOf(factory, 'documents'),
  entries: await rowsOf(factory, 'entries'),
});

it.each([
  ['at the first record', 'byAbort', null],
  ['at the sales, when the drafts were written already', 'byAbort', 'entries'],
  ['at the sales, each refused for itself', 'byRequest', 'entries'],
] as const)(
  'a count that is brought in on a disk that is full %s leaves all as it was, and comes in once there is room',
  async (_, how, table) => {
    const file = await aCountFile();
    const device = aDevice();
    const store = await openTab(device, 'here');
    const before = await allRows(device);
    const { makeRoom } = fillTheDisk(how, table);
    const take = async () => store.actions.takeCopy('Count', await looked(store, file), { mode: 'beside' });
    expect(await take()).toEqual({ state: 'notKept', why: 'diskFull' });
    expect(store.getState().entries.stallTap).toEqual([]);
    expect(await allRows(device)).toEqual(before);
    makeRoom();
    expect(await take()).toMatchObject({ state: 'replaced' });
    const ids = (all: readonly { readonly id: string }[]) => all.map(({ id }) => id);
    const taps = store.getState().entries.stallTap;
    expect([taps.length, new Set(ids(taps)).size]).toEqual([20, 20]);
    // Once more is no more than once, here and on the next visit.
    await take();
    expect(ids(store.getState().entries.stallTap)).toEqual(ids(taps));
    expect(ids((await openTab(device, 'next')).getState().entries.stallTap)).toEqual(ids(taps));
  },
);
