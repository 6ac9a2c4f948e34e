import { describe, expect, it } from 'vitest';
import { aJobBody } from '@/tests/lib/stored/smallRegistry';
import { aDevice, changeJob, copyOf, jobIn, openTab, type SmallStore, type TabOptions } from './tabs';

/* The example of a first visit has the same ids on every device. */

const example = (day: string): TabOptions => ({
  examples: {
    label: 'Example',
    load: async () => [
      { id: 'workshop', kind: 'workshop', body: { name: `Rates of ${day}` } },
      { id: 'job-1', kind: 'job', body: aJobBody() },
    ],
  },
});
const firstVisit = async (now: number, day: string) => {
  const device = aDevice();
  device.clock.now = now;
  return openTab(device, 'here', example(day));
};
const usedLaptop = async () => {
  const store = await firstVisit(1_000_000, 'Monday');
  store.actions.edit('Rates', [
    { do: 'change', kind: 'workshop', id: 'workshop', to: () => ({ name: 'My rates' }) },
  ]);
  changeJob(store, { name: 'My own' });
  await store.flush();
  return store;
};
const ratesOf = (store: SmallStore) =>
  store.getState().documents.find(({ kind }) => kind === 'workshop')?.body;
const take = async (store: SmallStore, file: Blob) => {
  const look = await store.actions.lookAtCopy(file);
  if (look.state !== 'copy') throw new Error(JSON.stringify(look.why));
  await store.actions.takeCopy('In', look, { mode: 'beside' });
  return Object.fromEntries(look.plan.meetings.map(({ id, state }) => [id, state]));
};

describe('the untouched example of a device opened later', () => {
  it('makes way for the maker’s own rates and what they made of the example', async () => {
    const laptop = await usedLaptop();
    const phone = await firstVisit(9_000_000, 'Friday');
    // A copy of nothing but the example changes nothing.
    await copyOf(phone);
    expect(await take(phone, await copyOf(laptop))).toEqual({
      'job-1': 'newerThere',
      workshop: 'newerThere',
    });
    expect(ratesOf(phone)).toEqual({ name: 'My rates' });
    expect(jobIn(phone)?.name).toBe('My own');
  });

  it('leaves the maker’s own as it is where it comes to that', async () => {
    const laptop = await usedLaptop();
    const phone = await firstVisit(9_000_000, 'Friday');
    expect(await take(laptop, await copyOf(phone))).toEqual({ 'job-1': 'newerHere', workshop: 'newerHere' });
    expect(ratesOf(laptop)).toEqual({ name: 'My rates' });
    expect(laptop.getState().documents).toHaveLength(2);
  });

  it('is not doubled by the example of another day', async () => {
    const laptop = await firstVisit(1_000_000, 'Monday');
    const phone = await firstVisit(9_000_000, 'Friday');
    await take(laptop, await copyOf(phone));
    expect(laptop.getState().documents).toHaveLength(2);
  });
});

it('what came in from a copy is no untouched example, though nobody has edited it here', async () => {
  const laptop = await usedLaptop();
  const restored = await openTab(aDevice(), 'restored');
  await take(restored, await copyOf(laptop));
  const phone = await firstVisit(9_000_000, 'Friday');
  expect(await take(phone, await copyOf(restored))).toEqual({
    'job-1': 'newerThere',
    workshop: 'newerThere',
  });
  expect(ratesOf(phone)).toEqual({ name: 'My rates' });
});
