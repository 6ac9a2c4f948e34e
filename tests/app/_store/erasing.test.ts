import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it, onTestFinished } from 'vitest';
import { backendTables } from '@/app/_backend/backend';
import { openDeviceBackend } from '@/app/_backend/deviceBackend';
import { createDocumentStore } from '@/app/_store/createDocumentStore';
import { openTabMessages } from '@/app/_tab/tabMessages';
import { planErasure } from '@/lib/erasing/planErasure';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { type DocumentBodies, kinds } from '@/lib/kinds/kinds';
import { paperKinds } from '@/lib/kinds/paperKinds';
import type { Customer } from '@/shared/schemas/customer';
import {
  certificate,
  clubCustomer,
  clubDrafts,
  clubEntries,
  clubPapers,
  letter,
  NAME,
  PERSON,
  PERSONAL,
  receipt,
  signed,
} from '@/tests/fixtures/clubDocuments';
import { fillTheDisk } from './fullDisk';
import { rowsOf, STORE, writeRow } from './tabs';

const DAY = '2026-11-27';
let devices = 0;

const aDevice = () => {
  const factory = new IDBFactory();
  devices += 1;
  const channel = `erasing-${devices}`;
  const open = async (tab = 'here') => {
    const store = createDocumentStore<DocumentBodies>({
      ...{ registry: kinds, paperKinds, entryKinds, tab },
      now: () => 2_000_000,
      openBackend: (on) =>
        openDeviceBackend({ ...on, name: STORE, database: () => ({ indexedDB: factory }) }),
      openMessages: (onWrote) => openTabMessages(channel, onWrote),
      watchPage: () => () => undefined,
    });
    onTestFinished(store.close);
    await store.open();
    return store;
  };
  return { factory, open };
};
type Store = Awaited<ReturnType<ReturnType<typeof aDevice>['open']>>;

/** A device on which the club ordered, with a history, a copy made, and files. */
const usedDevice = async ({ hasAside = true } = {}) => {
  const device = aDevice();
  (await device.open('first')).close();
  for (const draft of clubDrafts().filter(({ id }) => id !== 'club'))
    await writeRow(device.factory, 'documents', draft);
  for (const entry of clubEntries) await writeRow(device.factory, 'entries', entry);
  for (const paper of clubPapers) await writeRow(device.factory, 'papers', paper);
  for (const { content, attachment } of [letter, signed, certificate, receipt])
    await writeRow(device.factory, 'files', {
      ...{ id: attachment.fileId, name: attachment.fileName, content: new Blob([content]) },
    });
  const aside = { key: 'a1', raw: { id: 'order-1', kind: 'order', body: { name: NAME } } };
  if (hasAside) await writeRow(device.factory, 'aside', aside);
  const store = await device.open();
  store.actions.edit(NAME, [{ do: 'add', kind: 'customer', id: 'club', body: clubCustomer }]);
  await store.flush();
  await store.actions.makeCopy('everything');
  store.actions.edit(`Note of ${NAME}`, [
    { do: 'change', kind: 'customer', id: 'club', to: (body) => ({ ...body, note: `${PERSON} is ill` }) },
  ]);
  store.actions.edit('Other name', [
    { do: 'change', kind: 'customer', id: 'shop', to: (body) => ({ ...body, name: 'Otherwhere Shop' }) },
  ]);
  await store.flush();
  return { ...device, store };
};

/** Every row but those of papers, and of files their names. */
const keptText = async (factory: IDBFactory) => {
  const tables = Object.keys(backendTables).filter((table) => table !== 'papers');
  const rows = await Promise.all(tables.map((table) => rowsOf(factory, table)));
  return JSON.stringify(rows).toLowerCase();
};
const fileIds = async (factory: IDBFactory) =>
  (await rowsOf(factory, 'files')).map((row) => (row as { id: string }).id).toSorted();
const customerIn = (store: Store) =>
  store.getState().documents.find(({ id }) => id === 'club')?.body as Customer | undefined;

describe('a customer who is erased', () => {
  it('is in no kept row any more but those of papers', async () => {
    const { factory, store } = await usedDevice();
    const before = await keptText(factory);
    for (const personal of PERSONAL) expect(before).toContain(personal.toLowerCase());
    const outcome = await store.actions.erase('club', DAY);
    expect(outcome).toMatchObject({ state: 'erased', papersKept: [{ id: 'devicea1-2' }], stillNamed: [] });
    const after = await keptText(factory);
    for (const personal of PERSONAL) expect(after).not.toContain(personal.toLowerCase());
    expect(JSON.stringify(await rowsOf(factory, 'papers'))).toContain(PERSON);
  });

  it('leaves no file of its own, and keeps the receipt that an expense still names', async () => {
    const { factory, store } = await usedDevice();
    await store.actions.erase('club', DAY);
    expect(await fileIds(factory)).toEqual([receipt.attachment.fileId]);
  });

  it('is brought back by no undo, and what else was done can still be undone', async () => {
    const { store } = await usedDevice();
    await store.actions.erase('club', DAY);
    expect(store.getState().undoLabel).toBe('Other name');
    expect(await store.actions.undo()).toMatchObject({ state: 'moved', label: 'Other name' });
    expect(store.getState().canUndo).toBe(false);
    expect(customerIn(store)?.name).toBe('Erased on 2026-11-27');
  });

  it('is gone from this tab and the others at once, and from what they copy', async () => {
    const { open, store } = await usedDevice();
    const other = await open('other');
    await store.actions.erase('club', DAY);
    await expect.poll(() => customerIn(other)?.name).toBe('Erased on 2026-11-27');
    for (const tab of [store, other]) {
      const { documents, removed, entries, undoLabel } = tab.getState();
      const text = JSON.stringify({ documents, removed, entries, undoLabel });
      for (const personal of PERSONAL) expect(text).not.toContain(personal);
      const { file } = await tab.actions.makeCopy('everything');
      // The papers go along as they went out.
      expect(
        (await file.text()).split('\n').filter((line) => line.includes(PERSON) && !line.includes('"paper"')),
      ).toEqual([]);
    }
  });

  it('comes back from no copy that is brought in beside what is here, and nothing is set aside', async () => {
    const { factory, store } = await usedDevice({ hasAside: false });
    const { file } = await store.actions.makeCopy('everything');
    await store.actions.erase('club', DAY);
    const look = await store.actions.lookAtCopy(file);
    if (look.state !== 'copy') throw new Error('no copy');
    await store.actions.takeCopy('Copy', look, { mode: 'beside' });
    expect(customerIn(store)?.name).toBe('Erased on 2026-11-27');
    expect(await rowsOf(factory, 'aside')).toEqual([]);
    expect(JSON.stringify(store.getState().entries)).not.toContain(PERSON);
  });

  it('stays whole where the disk is full, and that is told', async () => {
    const { factory, store } = await usedDevice();
    const before = await keptText(factory);
    const disk = fillTheDisk('byRequest', 'documents');
    expect(await store.actions.erase('club', DAY)).toEqual({ state: 'notKept', why: 'diskFull' });
    disk.makeRoom();
    expect(await keptText(factory)).toBe(before);
  });

  it('is nothing where there is no such customer', async () => {
    const { store } = await usedDevice();
    expect(await store.actions.erase('nobody', DAY)).toEqual({ state: 'noSuchCustomer' });
  });
});

it('the plan that a screen shows before is what the store does', async () => {
  const { store } = await usedDevice();
  const { documents, removed, entries, papers } = store.getState();
  const told = planErasure(
    'club',
    {
      drafts: [...documents, ...removed],
      entries: Object.values(entries).flat(),
      papers: Object.values(papers).flat(),
    },
    DAY,
  );
  const done = await store.actions.erase('club', DAY);
  expect(done).toMatchObject({ papersKept: told?.papersKept.map(({ id }) => ({ id })) });
});
