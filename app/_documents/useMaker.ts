'use client';

import { useMemo } from 'react';
import { useDocuments } from '../_storage/useDocuments';
import { type MakerActions, makerActions } from './makerActions';
import { type MakerDocuments, makerDocuments } from './makerDocuments';

export type Maker = ReturnType<typeof useMaker>;

/** What every screen works with: the documents by kind, and what can be done with them. */
export function useMaker() {
  const store = useDocuments();
  const { kinds, edit } = store;
  const sorted: MakerDocuments = useMemo(() => makerDocuments(kinds), [kinds]);
  const actions: MakerActions = useMemo(() => makerActions(edit), [edit]);
  return { ...store, ...sorted, ...actions };
}
