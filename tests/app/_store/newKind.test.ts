// @vitest-environment jsdom
import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it, onTestFinished } from 'vitest';
import { z } from 'zod';
import { openDeviceBackend } from '@/app/_backend/deviceBackend';
import { createDocumentStore } from '@/app/_store/createDocumentStore';
import { exampleDocuments } from '@/lib/examples/exampleDocuments';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { type DocumentBodies, kinds } from '@/lib/kinds/kinds';
import { paperKinds } from '@/lib/kinds/paperKinds';
import { usersOf } from '@/lib/kinds/usersOf';
import type { KindDescriptor, Registry } from '@/lib/stored/registry';
import { bringBack, copyOf } from './tabs';

/* A kind that no file of the app knows: one descriptor, and one line in the table of this test. */

const noteSchema = z.strictObject({ text: z.string(), jobId: z.string(), fileId: z.string().nullable() });
type Note = z.infer<typeof noteSchema>;
const note: KindDescriptor<Note, 'draft'> = {
  nature: 'draft',
  word: 'note',
  version: 2,
  schema: noteSchema,
  steps: { 1: (body) => ({ ...z.looseObject({}).parse(body), fileId: null }) },
  linksOf: ({ jobId }) => [{ to: 'job', id: jobId, path: ['jobId'] }],
};
type Bodies = DocumentBodies & { readonly note: Note };
const registry: Registry<Bodies> = { ...kinds, note };

const openOn = async (factory: IDBFactory) => {
  const store = createDocumentStore<Bodies>({
    registry,
    paperKinds,
    entryKinds,
    tab: 'here',
    now: () => 1000,
    openBackend: (on) =>
      openDeviceBackend({ ...on, name: 'notes', database: () => ({ indexedDB: factory }) }),
    openMessages: () => ({ tell: () => undefined, close: () => undefined }),
    watchPage: () => () => undefined,
    examples: { label: 'Examples', load: async () => exampleDocuments('2026-11-25') },
  });
  onTestFinished(store.close);
  await store.open();
  return store;
};
const body: Note = { text: 'Ring the club', jobId: 'club-order', fileId: null };

/** A copy as they were before, with these records. */
const former = (records: { readonly documents: readonly unknown[] }): Blob =>
  new Blob([
    JSON.stringify({
      format: 'pressminute-backup',
      formatVersion: 1,
      exportedAt: 1,
      unreadable: [],
      files: [],
      ...records,
    }),
  ]);

describe('a new kind of document', () => {
  it('is stored, edited, undone, saved and brought back by its line in the table alone', async () => {
    const device = new IDBFactory();
    const store = await openOn(device);
    const shown = () => store.getState().kinds.note.bodies;
    const { actions } = store;
    actions.edit('Note', [{ do: 'add', kind: 'note', id: 'n1', body }]);
    actions.edit('Word', [
      { do: 'change', kind: 'note', id: 'n1', to: (one) => ({ ...one, text: 'Write' }) },
    ]);
    await store.flush();
    expect(shown()).toEqual({ n1: { ...body, text: 'Write' } });
    await actions.undo();
    expect(shown()).toEqual({ n1: body });
    await actions.redo();
    expect(
      actions.edit('Bad', [{ do: 'change', kind: 'note', id: 'n1', to: () => ({}) as Note }]),
    ).toMatchObject({
      state: 'refused',
    });
    expect(
      usersOf(registry, store.getState().documents, { to: 'job', id: 'club-order' }).map(({ id }) => id),
    ).toEqual(['club-enquiry', 'club-prices', 'n1']);
    const copy = await copyOf({ actions });
    store.close();

    const again = await openOn(device);
    expect(again.getState().kinds.note.bodies.n1?.text).toBe('Write');
    again.actions.edit('Remove', [{ do: 'delete', kind: 'note', id: 'n1' }]);
    expect(again.getState().removed.map(({ id }) => id)).toEqual(['n1']);
    await again.flush();

    const other = await openOn(new IDBFactory());
    expect(await bringBack(other, copy)).toEqual({ state: 'replaced' });
    expect(other.getState().kinds.note.bodies).toEqual({ n1: { ...body, text: 'Write' } });
    expect(other.getState().kinds.job.documents).toHaveLength(3);
  });

  it('of an earlier version is brought up to date on its way in', async () => {
    const store = await openOn(new IDBFactory());
    const old = {
      id: 'n0',
      kind: 'note',
      version: 1,
      revision: 1,
      updatedAt: 1,
      body: { text: 'Old', jobId: 'x' },
    };
    expect(await bringBack(store, former({ documents: [old] }))).toEqual({
      state: 'replaced',
    });
    expect(store.getState().kinds.note.bodies.n0).toEqual({ text: 'Old', jobId: 'x', fileId: null });
  });

  it('that this build does not know in a copy is kept unread in the store', async () => {
    const store = await openOn(new IDBFactory());
    const strange = { id: 's', kind: 'invoice', version: 1, revision: 1, updatedAt: 1, body: {} };
    expect(await bringBack(store, former({ documents: [strange] }))).toEqual({ state: 'replaced' });
    expect(store.getState().unreadable).toMatchObject([{ id: 's', findings: [{ code: 'unknownKind' }] }]);
  });

  it('that is no draft is refused by its type: nothing here keeps it from being changed', () => {
    const issued: KindDescriptor<Note, 'issued'> = { ...note, nature: 'issued' };
    // @ts-expect-error the store takes drafts alone
    const wrong: Registry<Bodies> = { ...kinds, note: issued };
    expect(Object.keys(wrong)).toContain('note');
  });
});

describe('the table of kinds', () => {
  it('names the kinds of today under the names their records bear', () => {
    expect(Object.keys(kinds).toSorted()).toEqual([
      'artwork',
      'blank',
      'buyingList',
      'consumable',
      'customer',
      'job',
      'order',
      'priceList',
      'run',
      'shop',
      'stallDay',
      'supplier',
      'workshop',
    ]);
  });
});
