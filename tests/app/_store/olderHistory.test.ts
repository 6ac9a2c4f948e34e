import { expect, it } from 'vitest';
import type { BackendTable } from '@/app/_store/backend';
import { createDocumentStore } from '@/app/_store/createDocumentStore';
import { memoryBackend } from '@/app/_store/memoryBackend';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { type DocumentBodies, kinds } from '@/lib/kinds/kinds';
import { paperKinds } from '@/lib/kinds/paperKinds';
import older from '@/tests/fixtures/stored/storeBeforeEntries.json' with { type: 'json' };

/** The rows of a store as an older build left them, files apart. */
const tables: Partial<Record<BackendTable, readonly unknown[]>> = older.tables;

it('steps of an older build, whose documents held versions and ink, can all be undone and redone', async () => {
  const backend = memoryBackend();
  await backend.transact('write', async (tx) => {
    for (const table of ['documents', 'steps', 'contents', 'meta'] as const) {
      await tx.put(table, (tables[table] ?? []) as readonly Readonly<Record<string, unknown>>[]);
    }
  });
  const store = createDocumentStore<DocumentBodies>({
    registry: kinds,
    paperKinds,
    entryKinds,
    tab: older.tables.steps[0]?.tab ?? '',
    now: () => Date.now(),
    openBackend: async () => ({ state: 'open', backend }),
    openMessages: () => ({ tell: () => undefined, close: () => undefined }),
    watchPage: () => () => undefined,
  });
  await store.open();
  const before = store.getState().documents;
  const labels = older.tables.steps.map(({ label }) => label);
  for (const label of labels.toReversed()) {
    expect(await store.actions.undo()).toMatchObject({ state: 'moved', label });
  }
  for (const label of labels) {
    expect(await store.actions.redo()).toMatchObject({ state: 'moved', label });
  }
  const bodies = (documents: typeof before) => documents.map(({ id, body }) => ({ id, body }));
  expect(bodies(store.getState().documents)).toEqual(bodies(before));
  store.close();
});
