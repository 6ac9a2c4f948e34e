import { act, render, screen } from '@testing-library/react';
import type { ReactElement } from 'react';
import type { Backend, BackendTable } from '@/app/_backend/backend';
import type { BackendOpening } from '@/app/_backend/deviceBackend';
import { memoryBackend } from '@/app/_backend/memoryBackend';
import { type Measures, MeasuresContext } from '@/app/_numbers/measures';
import { NumberLocale } from '@/app/_numbers/numberLocale';
import { createDocumentStore } from '@/app/_store/createDocumentStore';
import type { DocumentStore } from '@/app/_store/documentStore';
import type { Visit } from '@/app/_store/visitMark';
import { exampleApprovals } from '@/lib/examples/exampleApprovals';
import { exampleDocuments } from '@/lib/examples/exampleDocuments';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { type DocumentBodies, kinds } from '@/lib/kinds/kinds';
import { paperKinds } from '@/lib/kinds/paperKinds';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

let store: DocumentStore<DocumentBodies> | null = null;
let backend: Backend = memoryBackend();

/** Stands in for the documents of the tab: the real store on a shelf in memory, filled as on a first visit. */
export function screenStore(): DocumentStore<DocumentBodies> {
  store ??= createDocumentStore<DocumentBodies>({
    registry: kinds,
    paperKinds,
    entryKinds,
    tab: 'here',
    now: () => Date.now(),
    openBackend: async (): Promise<BackendOpening> =>
      opening.failure ?? { state: 'open', backend: withRoom(backend) },
    openMessages: () => ({ tell: () => undefined, close: () => undefined }),
    watchPage: () => () => undefined,
    visits: { last: () => visit.last, note: () => undefined },
    examples: {
      label: 'Examples',
      load: async () => exampleDocuments(TEST_DAY),
      loadEntries: async () => exampleApprovals(),
    },
  });
  return store;
}

/** Leaves the page and keeps what is on the shelf, as a reload does. */
export function leaveScreens(): void {
  store?.close();
  store = null;
}

/** Set to make the device's store fail to open. */
export const opening: { failure: BackendOpening | null } = { failure: null };

/** Set to make every write fail for want of room. */
export const disk: { isFull: boolean } = { isFull: false };

/** Set to what the browser still knows of an earlier visit; a store that is empty then was wiped. */
export const visit: { last: Visit | null } = { last: null };

const withRoom = (shelf: Backend): Backend => ({
  ...shelf,
  transact: (mode, run) =>
    disk.isFull && mode !== 'read'
      ? Promise.reject(new DOMException('The disk is full.', 'QuotaExceededError'))
      : shelf.transact(mode, run),
});

export function clearScreens(): void {
  leaveScreens();
  backend = memoryBackend();
  opening.failure = null;
  disk.isFull = false;
  visit.last = null;
  localStorage.clear();
  sessionStorage.clear();
  window.location.hash = '';
}

/** Puts a record on the shelf past the app, as damage would. */
export const damage = (
  row: Readonly<Record<string, unknown>>,
  table: BackendTable = 'documents',
): Promise<void> => backend.transact('write', async (tx) => tx.put(table, [row]));

const measures: Measures = {
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
  currency: 'USD',
};

/** Enters a screen and waits until its documents are open. */
export async function enter(room: ReactElement): Promise<void> {
  render(
    <NumberLocale value="en-US">
      <MeasuresContext value={measures}>{room}</MeasuresContext>
    </NumberLocale>,
  );
  await screen.findByRole('heading', { level: 1 });
}

/** The body of a document as the store shows it. */
export function bodyOf<Kind extends keyof DocumentBodies>(kind: Kind, id: string): DocumentBodies[Kind] {
  const found = screenStore()
    .getState()
    .documents.find((document) => document.kind === kind && document.id === id);
  if (found === undefined) throw new Error(`there is no ${kind} ${id}`);
  return found.body as DocumentBodies[Kind];
}

/** Ids of all documents of a kind. */
export const idsOf = (kind: keyof DocumentBodies): readonly string[] =>
  screenStore()
    .getState()
    .documents.filter((document) => document.kind === kind)
    .map(({ id }) => id);

export const undo = (): Promise<unknown> => act(() => screenStore().actions.undo());
