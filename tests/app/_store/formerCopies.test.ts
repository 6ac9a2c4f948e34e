import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it, onTestFinished } from 'vitest';
import { approvedVersions } from '@/lib/artwork/approvedVersions';
import { foldStock } from '@/lib/stock/foldStock';
import { onHand } from '@/lib/stock/onHand';
import { BACKUP_FORMAT } from '@/shared/schemas/stored';
import { formerDevice, formerTables, tabOn } from './formerStore';
import { writeRow } from './tabs';

/* A backup of the build before entries, brought in on a device that has gone on since. */

const backupOf = (documents: readonly object[]) =>
  new Blob([
    JSON.stringify({
      ...{ format: BACKUP_FORMAT, formatVersion: 1, exportedAt: 1 },
      ...{ documents, unreadable: [], files: [] },
    }),
  ]);
type Store = ReturnType<typeof tabOn>;
const opened = async (factory: IDBFactory): Promise<Store> => {
  const store = tabOn(factory);
  onTestFinished(store.close);
  await store.open();
  return store;
};
const take = async (store: Store, file: Blob, mode: 'beside' | 'replace') => {
  const look = await store.actions.lookAtCopy(file);
  if (look.state !== 'copy') throw new Error(JSON.stringify(look.why));
  await store.actions.takeCopy('In', look, { mode });
  return look.plan;
};
const factsIn = (store: Store) => {
  const { stockMove, stockTransfer, stockCount, approval, inkRefill } = store.getState().entries;
  return {
    stock: onHand(foldStock([...stockMove, ...stockTransfer, ...stockCount])),
    approved: approvedVersions(approval),
    mL: inkRefill.map(({ body }) => body.mL),
  };
};
const rowWhere = (kind: string, has: (body: never) => boolean) => {
  const row = formerTables.documents.find((one) => one.kind === kind && has(one.body as never));
  if (row === undefined) throw new Error(`no such ${kind}`);
  return row;
};
const stocked = rowWhere('blank', ({ sizes }: { sizes: { onHand: number }[] }) =>
  sizes.some(({ onHand: pieces }) => pieces > 0),
);
const approved = rowWhere(
  'artwork',
  ({ approvedVersion }: { approvedVersion: number | null }) => approvedVersion !== null,
);
const inked = rowWhere('workshop', () => true);

describe('an old backup beside what is here', () => {
  it('counts no stock again that was sold since, and no approval that was withdrawn', async () => {
    const factory = await formerDevice();
    const { sizes } = stocked.body as unknown as { sizes: object[] };
    const later = { revision: 9, updatedAt: stocked.updatedAt + 1e8 };
    const soldOut = { ...stocked.body, sizes: sizes.map((size) => ({ ...size, onHand: 0 })) };
    await writeRow(factory, 'documents', { ...stocked, ...later, body: soldOut });
    const withdrawn = { ...approved.body, approvedVersion: null };
    await writeRow(factory, 'documents', { ...approved, ...later, body: withdrawn });
    const store = await opened(factory);
    const before = factsIn(store);
    const plan = await take(store, backupOf([stocked, approved]), 'beside');
    expect(factsIn(store)).toEqual(before);
    expect(plan.counts.newEntries).toEqual({});
  });

  it('counts no refill twice that was corrected since', async () => {
    const factory = await formerDevice();
    const { inkRecord } = inked.body as unknown as { inkRecord: { refills: { mL: number }[] } };
    const [first, ...others] = inkRecord.refills;
    if (first === undefined) throw new Error('no refill');
    const refills = [{ ...first, mL: first.mL + 5 }, ...others];
    const body = { ...inked.body, inkRecord: { ...inkRecord, refills } };
    const store = await opened(factory);
    const before = factsIn(store);
    await take(store, backupOf([{ ...inked, updatedAt: inked.updatedAt - 1e6, body }]), 'beside');
    expect(factsIn(store)).toEqual(before);
  });

  it('brings what left its drafts with those that are not here', async () => {
    const store = await opened(new IDBFactory());
    const plan = await take(store, backupOf([inked, stocked, approved]), 'beside');
    expect(plan.counts.newEntries).toMatchObject({ approval: 1 });
    expect(Object.keys(factsIn(store).stock)).toEqual([stocked.id]);
    expect(factsIn(store).approved).toMatchObject({ [approved.id]: expect.any(Number) });
  });
});

it('an old backup in the place of everything shows the figures it holds', async () => {
  const factory = await formerDevice();
  const now = { revision: 9, updatedAt: approved.updatedAt + 1e8 };
  await writeRow(factory, 'documents', {
    ...{ ...approved, ...now },
    body: { ...approved.body, approvedVersion: null },
  });
  const store = await opened(factory);
  await take(store, backupOf([inked, approved]), 'replace');
  expect(Object.keys(factsIn(store).approved)).toEqual([approved.id]);
});
