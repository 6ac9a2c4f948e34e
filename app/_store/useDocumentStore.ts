'use client';

import { useEffect, useSyncExternalStore } from 'react';
import type { EntryBodies } from '@/lib/kinds/entryKinds';
import type { PaperBodies } from '@/lib/kinds/paperKinds';
import type { Bodies } from '@/lib/stored/registry';
import type { DocumentActions, DocumentStore } from './documentStore';
import type { DocumentsState } from './documentsState';

/** The documents as a screen uses them: what there is, and what can be done with it. */
export type Documents<
  Kinds extends Bodies,
  Papers extends Bodies = PaperBodies,
  Entries extends Bodies = EntryBodies,
> = DocumentsState<Kinds, Papers, Entries> & DocumentActions<Kinds, Papers, Entries>;

/** Opens a store when the first screen needs it and keeps the screen in step with it. */
export function useDocumentStore<Kinds extends Bodies, Papers extends Bodies, Entries extends Bodies>(
  store: DocumentStore<Kinds, Papers, Entries>,
): Documents<Kinds, Papers, Entries> {
  const state = useSyncExternalStore(store.subscribe, store.getState, store.getFirstState);
  useEffect(() => {
    void store.open();
  }, [store]);
  return { ...state, ...store.actions };
}
