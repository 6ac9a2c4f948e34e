'use client';

import { useEffect, useSyncExternalStore } from 'react';
import type { Bodies } from '@/lib/stored/registry';
import type { DocumentActions, DocumentStore } from './documentStore';
import type { DocumentsState } from './documentsState';

/** The documents as a screen uses them: what there is, and what can be done with it. */
export type Documents<Kinds extends Bodies> = DocumentsState<Kinds> & DocumentActions<Kinds>;

/** Opens a store when the first screen needs it and keeps the screen in step with it. */
export function useDocumentStore<Kinds extends Bodies>(store: DocumentStore<Kinds>): Documents<Kinds> {
  const state = useSyncExternalStore(store.subscribe, store.getState, store.getFirstState);
  useEffect(() => {
    void store.open();
  }, [store]);
  return { ...state, ...store.actions };
}
