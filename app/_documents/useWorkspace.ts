'use client';

import { useMemo } from 'react';
import { useDocuments } from '@/app/_store/useDocuments';
import { type MakerDocuments, makerDocuments } from './documentsByKind';
import { type MakerActions, makerActions } from './workspaceActions';

export type Maker = ReturnType<typeof useMaker>;

/** What every screen works with: the documents by kind, and what can be done with them. */
export function useMaker() {
  const store = useDocuments();
  const { documents, edit } = store;
  const sorted: MakerDocuments = useMemo(() => makerDocuments(documents), [documents]);
  const actions: MakerActions = useMemo(() => makerActions(edit), [edit]);
  return { ...store, ...sorted, ...actions };
}
