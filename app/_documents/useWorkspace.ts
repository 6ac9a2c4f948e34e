'use client';

import { useMemo } from 'react';
import { useDocuments } from '@/app/_store/useDocuments';
import { type DocumentsByKind, documentsByKind } from './documentsByKind';
import { type Noted, useNoted } from './useNoted';
import { type WorkspaceActions, workspaceActions } from './workspaceActions';

export type Workspace = ReturnType<typeof useWorkspace>;

/** What every screen works with: the documents by kind, what was noted, and what can be done with them. */
export function useWorkspace() {
  const store = useDocuments();
  const { kinds, papers, edit, note } = store;
  const sorted: DocumentsByKind = useMemo(
    () => documentsByKind(kinds, papers.priceListVersion),
    [kinds, papers.priceListVersion],
  );
  const noted: Noted = useNoted(store);
  const actions: WorkspaceActions = useMemo(() => workspaceActions({ edit, note }), [edit, note]);
  return { ...store, ...sorted, ...noted, ...actions };
}
