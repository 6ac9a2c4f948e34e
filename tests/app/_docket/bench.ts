import { memoryBackend } from '@/app/_backend/memoryBackend';
import type { PriceService } from '@/app/_pricing/priceService';
import { createDocumentStore } from '@/app/_store/createDocumentStore';
import type { DocumentStore } from '@/app/_store/documentStore';
import { priceJob } from '@/lib/costing/priceJob';
import { exampleApprovals } from '@/lib/examples/exampleApprovals';
import { exampleDocuments } from '@/lib/examples/exampleDocuments';
import { Grid } from '@/lib/grid/evaluateGrid';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { type DocumentBodies, kinds } from '@/lib/kinds/kinds';
import { paperKinds } from '@/lib/kinds/paperKinds';
import type { Artwork } from '@/shared/schemas/artwork';
import type { Blank } from '@/shared/schemas/blank';
import type { Job, Line, Placement } from '@/shared/schemas/job';
import type { Workshop } from '@/shared/schemas/workshop';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

let store: DocumentStore<DocumentBodies> | null = null;
const grid = new Grid();

/** Stands in for the documents of the tab: the real store with the worked examples, on a shelf in memory. */
export function benchStore(): DocumentStore<DocumentBodies> {
  store ??= createDocumentStore<DocumentBodies>({
    registry: kinds,
    paperKinds,
    entryKinds,
    tab: 'here',
    now: () => Date.now(),
    openBackend: async () => ({ state: 'open', backend: memoryBackend() }),
    openMessages: () => ({ tell: () => undefined, close: () => undefined }),
    watchPage: () => () => undefined,
    examples: {
      label: 'Examples',
      load: async () => exampleDocuments(TEST_DAY),
      loadEntries: async () => exampleApprovals(),
    },
  });
  return store;
}

/** Stands in for the worker: the same sums, at once. */
export const benchPrices = {
  failing: false,
  start: (): PriceService => ({
    ask: (_, input, onAnswer) =>
      queueMicrotask(() =>
        onAnswer(
          benchPrices.failing
            ? { kind: 'missing', failure: { kind: 'failed', why: 'RangeError: out of paper', again: null } }
            : {
                kind: 'answered',
                isLast: true,
                answer: { answer: priceJob(input, grid), layouts: undefined, shared: null },
              },
        ),
      ),
    leave: () => undefined,
    stop: () => undefined,
  }),
};

export function clearBench(): void {
  store?.close();
  store = null;
  benchPrices.failing = false;
  // What one test unfolds is folded again for the next.
  localStorage.clear();
}

/** What the store shows now. */
export const kept = {
  job: (id = 'club-order'): Job => bodyOf('job', id),
  line: (index = 0): Line => present(kept.job().lines[index]),
  placement: (index = 0): Placement => present(kept.line().placements[index]),
  artwork: (id: string): Artwork => bodyOf('artwork', id),
  blank: (id: string): Blank => bodyOf('blank', id),
  workshop: (): Workshop => bodyOf('workshop', 'workshop'),
  undoLabel: () => benchStore().getState().undoLabel,
};

function bodyOf<Kind extends keyof DocumentBodies>(kind: Kind, id: string): DocumentBodies[Kind] {
  const found = benchStore()
    .getState()
    .documents.find((document) => document.id === id && document.kind === kind);
  return present(found).body as DocumentBodies[Kind];
}

function present<T>(value: T | undefined): T {
  if (value === undefined) throw new Error('the bench has nothing there');
  return value;
}
