import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import type { PaperRegistry } from '@/lib/stored/registry';
import { paperNumberSchema } from '@/shared/schemas/happened';
import { type SmallPapers, smallPaperKinds } from '@/tests/lib/stored/smallRegistry';
import { fillTheDisk } from './fullDisk';
import {
  aDevice,
  type Device,
  openTab,
  openTabWithJob,
  rowsOf,
  type SmallStore,
  type TabOptions,
} from './tabs';

/* Papers and entries as a later build reads them: its offers are in their second version, `text` became `words`. */

const later: TabOptions = {
  paperKinds: {
    ...smallPaperKinds,
    offer: {
      ...smallPaperKinds.offer,
      version: 2,
      schema: z.strictObject({ number: paperNumberSchema, words: z.string() }),
      steps: {
        1: (body: unknown) => {
          const { number, text } = z
            .strictObject({ number: paperNumberSchema, text: z.string() })
            .parse(body);
          return { number, words: text };
        },
      },
    },
    // The store of these tests knows offers by their first version.
  } as unknown as PaperRegistry<SmallPapers>,
};

const anOffer = async (): Promise<{ readonly device: Device; readonly store: SmallStore }> => {
  const device = aDevice();
  const store = await openTabWithJob(device);
  await store.actions.issue('Offer', {
    kind: 'offer',
    about: { kind: 'job', id: 'job-1' },
    series: 'job-1',
    body: (number) => ({ number, text: 'Twelve shirts' }),
  });
  return { device, store };
};
const lookedAt = async (store: SmallStore, file: Blob) => {
  const look = await store.actions.lookAtCopy(file);
  if (look.state !== 'copy') throw new Error(JSON.stringify(look.why));
  return look;
};
const offers = (store: SmallStore): readonly unknown[] =>
  store.getState().papers.offer.map(({ body }) => body);
const read = [{ number: { count: 1, letter: expect.any(String) }, words: 'Twelve shirts' }];

describe('a paper of an earlier version', () => {
  it('is judged and copied as it was written, and read in the version known here', async () => {
    const { device, store } = await anOffer();
    store.close();
    const rows = await rowsOf(device.factory, 'papers');
    const next = await openTab(device, 'next', later);
    expect(offers(next)).toEqual(read);
    const { file } = await next.actions.makeCopy('everything');
    expect(await file.text()).toContain('"text":"Twelve shirts"');
    const other = aDevice();
    const there = await openTab(other, 'there', later);
    const look = await lookedAt(there, file);
    expect(look.plan.counts).toMatchObject({ papers: 1, newPapers: 1 });
    await there.actions.takeCopy('Copy', look, { mode: 'beside' });
    expect(offers(there)).toEqual(read);
    // Whole after a reload too: the row is the one that went out.
    expect(await rowsOf(other.factory, 'papers')).toEqual(rows);
    there.close();
    const again = await openTab(other, 'again', later);
    expect(offers(again)).toEqual(read);
    expect(again.getState().unreadable).toEqual([]);
  });

  it('is the same for builds of both versions: a copy of one brings nothing new to the other', async () => {
    const { device, store } = await anOffer();
    const before = await store.actions.makeCopy('everything');
    const next = await openTab(device, 'next', later);
    for (const { file } of [before, await next.actions.makeCopy('everything')]) {
      for (const tab of [store, next]) {
        const { plan } = await lookedAt(tab, file);
        expect([plan.newPapers, plan.otherContent]).toEqual([[], []]);
      }
    }
  });
});

describe('what was noted on a full disk and went into a copy', () => {
  const refill = (mL: number) => ({ kind: 'inkRefill', body: { day: '2026-11-03', mL } }) as const;
  const refills = (store: SmallStore) => store.getState().entries.inkRefill.map(({ body }) => body.mL);

  it('counts once where it is written after all and the copy is brought in', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const disk = fillTheDisk();
    store.actions.note('Refill', [refill(70)]);
    store.actions.note('Refill', [refill(20)]);
    const wrong = store.getState().entries.inkRefill[1]?.id ?? '';
    store.actions.note('Taken back', [{ kind: 'takeBack', body: { entryId: wrong } }]);
    const first = await store.actions.makeCopy('everything');
    const second = await store.actions.makeCopy('everything');
    disk.makeRoom();
    await store.actions.retry();
    expect(refills(store)).toEqual([70]);
    for (const { file } of [first, second]) {
      const look = await lookedAt(store, file);
      expect(look.plan.counts).toMatchObject({ entries: 3, newEntries: {} });
      await store.actions.takeCopy('Copy', look, { mode: 'beside' });
    }
    store.actions.note('Refill', [refill(5)]);
    await store.flush();
    store.close();
    const again = await openTab(device, 'again');
    expect(refills(again).toSorted((one, other) => one - other)).toEqual([5, 70]);
    expect(await rowsOf(device.factory, 'entries')).toHaveLength(4);
  });
});
