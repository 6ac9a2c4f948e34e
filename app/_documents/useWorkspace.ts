'use client';

import { useMemo } from 'react';
import { useDocuments } from '@/app/_store/useDocuments';
import { type DocumentsByKind, documentsByKind } from './documentsByKind';
import { type WorkspaceActions, workspaceActions } from './workspaceActions';

export type Workspace = ReturnType<typeof useWorkspace>;

/** What every screen works with: the documents by kind, and what can be done with them. */
export function useWorkspace() {
  const store = useDocuments();
  const { kinds, papers, edit } = store;
  const sorted: DocumentsByKind = useMemo(
    () => documentsByKind(kinds, papers.priceListVersion),
    [kinds, papers.priceListVersion],
  );
  const actions: WorkspaceActions = useMemo(() => workspaceActions(edit), [edit]);
  return { ...store, ...sorted, ...actions };
}
