import { act, render, screen } from '@testing-library/react';
import type { ReactElement } from 'react';
import { MakerMeasures, type Measures } from '@/app/_fields/makerMeasures';
import { NumberLocale } from '@/app/_fields/numberLocale';
import { createDocumentStore } from '@/app/_storage/createDocumentStore';
import type { ShelfOpening } from '@/app/_storage/deviceShelf';
import { type DocumentBodies, documentRegistry } from '@/app/_storage/documentRegistry';
import type { DocumentStore } from '@/app/_storage/documentStore';
import { memoryShelf } from '@/app/_storage/memoryShelf';
import type { Shelf } from '@/app/_storage/shelf';
import { exampleDocuments } from '@/lib/examples/exampleDocuments';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

let store: DocumentStore<DocumentBodies> | null = null;
let shelf: Shelf = memoryShelf();

/** Stands in for the documents of the tab: the real store on a shelf in memory, filled as on a first visit. */
export function roomStore(): DocumentStore<DocumentBodies> {
  store ??= createDocumentStore<DocumentBodies>({
    registry: documentRegistry,
    tab: 'here',
    now: () => Date.now(),
    openShelf: async (): Promise<ShelfOpening> => opening.failure ?? { state: 'open', shelf },
    openMessages: () => ({ tell: () => undefined, close: () => undefined }),
    watchPage: () => () => undefined,
    examples: { label: 'Examples', load: async () => exampleDocuments(TEST_DAY) },
  });
  return store;
}

/** Leaves the page and keeps what is on the shelf, as a reload does. */
export function leaveRooms(): void {
  store?.close();
  store = null;
}

/** Set to make the device's store fail to open. */
export const opening: { failure: ShelfOpening | null } = { failure: null };

export function clearRooms(): void {
  leaveRooms();
  shelf = memoryShelf();
  opening.failure = null;
  localStorage.clear();
  sessionStorage.clear();
  window.location.hash = '';
}

/** Puts a record on the shelf past the app, as damage would. */
export const damage = (row: Readonly<Record<string, unknown>>): Promise<void> =>
  shelf.transact('write', async (tx) => tx.put('documents', [row]));

const measures: Measures = {
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
  currency: 'USD',
};

/** Enters a screen and waits until its documents are open. */
export async function enter(room: ReactElement): Promise<void> {
  render(
    <NumberLocale value="en-US">
      <MakerMeasures value={measures}>{room}</MakerMeasures>
    </NumberLocale>,
  );
  await screen.findByRole('heading', { level: 1 });
}

/** The body of a document as the store shows it. */
export function bodyOf<Kind extends keyof DocumentBodies>(kind: Kind, id: string): DocumentBodies[Kind] {
  const found = roomStore()
    .getState()
    .documents.find((document) => document.kind === kind && document.id === id);
  if (found === undefined) throw new Error(`there is no ${kind} ${id}`);
  return found.body as DocumentBodies[Kind];
}

/** Ids of all documents of a kind. */
export const idsOf = (kind: keyof DocumentBodies): readonly string[] =>
  roomStore()
    .getState()
    .documents.filter((document) => document.kind === kind)
    .map(({ id }) => id);

export const undo = (): Promise<unknown> => act(() => roomStore().actions.undo());
