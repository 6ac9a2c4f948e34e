import { describe, expect, it } from 'vitest';
import { aDevice, copyOf, openTab, openTabWithJob, type SmallStore } from './tabs';

/* What a preview counts beside drafts: what says something new, and a paper once. */

const approve = async (store: SmallStore, artworkId: string, version: number | null) => {
  store.actions.note('Approve', [{ kind: 'approval', body: { artworkId, version } }]);
  await store.flush();
};
const lookedAt = async (store: SmallStore, file: Blob) => {
  const look = await store.actions.lookAtCopy(file);
  if (look.state !== 'copy') throw new Error(JSON.stringify(look.why));
  return look;
};
const laptopAndPhone = async () => ({
  laptop: await openTabWithJob(aDevice()),
  phone: await openTab(aDevice(), 'phone'),
});

describe('the counts of a preview', () => {
  it('leave out an approval that each device noted by itself, as the example does', async () => {
    const { laptop, phone } = await laptopAndPhone();
    for (const store of [laptop, phone]) await approve(store, 'fern', 1);
    const { counts } = (await lookedAt(phone, await copyOf(laptop))).plan;
    expect([counts.newEntries, counts.entriesOnlyHere]).toEqual([{}, {}]);
  });

  it('count one of another picture, and one that the maker took away here since', async () => {
    const { laptop, phone } = await laptopAndPhone();
    for (const store of [laptop, phone]) await approve(store, 'fern', 1);
    await approve(laptop, 'otter', 2);
    await approve(phone, 'fern', null);
    const { counts } = (await lookedAt(phone, await copyOf(laptop))).plan;
    // Fern 1 and otter 2 say what is not so here; here nothing but “fern: none” is not so there.
    expect([counts.newEntries, counts.entriesOnlyHere]).toEqual([{ approval: 2 }, { approval: 1 }]);
  });

  it('count a paper once, not by the entry that issued it as well, and again once its coming was undone', async () => {
    const { laptop, phone } = await laptopAndPhone();
    await laptop.actions.issue('Offer', {
      kind: 'offer',
      about: { kind: 'job', id: 'job-1' },
      series: 'job-1',
      body: (number) => ({ number, text: 'Twenty shirts' }),
    });
    const look = await lookedAt(phone, await copyOf(laptop));
    expect(look.plan.counts).toMatchObject({ newPapers: 1, newEntries: {} });
    await phone.actions.takeCopy('In', look, { mode: 'beside' });
    const again = await lookedAt(phone, await copyOf(laptop));
    expect(again.plan.counts).toMatchObject({ newPapers: 0, newEntries: {} });
    await phone.actions.undo();
    const undone = await lookedAt(phone, await copyOf(laptop));
    expect(undone.plan.counts).toMatchObject({ newPapers: 1, newEntries: {} });
  });
});
