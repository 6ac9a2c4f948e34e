import { openDeviceBackend } from '@/app/_backend/deviceBackend';
import { holdPage } from '@/app/_tab/holdPage';
import { tabId } from '@/app/_tab/tabId';
import { openTabMessages } from '@/app/_tab/tabMessages';
import { watchPage } from '@/app/_tab/watchPage';
import type { DocumentBodies } from '@/lib/kinds/kinds';
import { appKinds } from './appKinds';
import { createDocumentStore } from './createDocumentStore';
import type { DocumentStore } from './documentStore';
import { firstDocuments } from './firstDocuments';
import { visitMark } from './visitMark';

const STORE_NAME = 'pressminute';

let store: DocumentStore<DocumentBodies> | null = null;

/** The documents of this tab. Made on first use in the browser; nothing is opened before somebody listens. */
export function appDocuments(): DocumentStore<DocumentBodies> {
  store ??= createDocumentStore<DocumentBodies>({
    ...appKinds(async () => (await import('@/lib/kinds/rareSchemas')).rareSchemas),
    tab: tabId(),
    now: () => Date.now(),
    openBackend: (on) =>
      openDeviceBackend({
        ...on,
        name: STORE_NAME,
        database: () => ({ indexedDB: globalThis.indexedDB }),
      }),
    openMessages: (onWrote) => openTabMessages(STORE_NAME, onWrote),
    watchPage,
    holdPage,
    visits: visitMark,
    examples: {
      label: 'Example workshop',
      load: () => firstDocuments(new Date(), navigator.language),
      loadEntries: async () => (await import('@/lib/examples/exampleApprovals')).exampleApprovals(),
    },
  });
  return store;
}
