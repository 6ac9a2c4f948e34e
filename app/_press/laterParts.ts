import { lazy } from '@/app/_network/lazy';

/** Parts of the press that are fetched behind what counts. */
export const laterParts = {
  changed: lazy(() => import('@/app/_runBook/RunChanged').then(({ RunChanged }) => RunChanged)),
  more: lazy(() => import('./more/MorePanel').then(({ MorePanel }) => MorePanel)),
  finished: lazy(() => import('./more/FinishedPart').then(({ FinishedPart }) => FinishedPart)),
  causes: lazy(() => import('./more/CausesPanel').then(({ CausesPanel }) => CausesPanel)),
  test: lazy(() => import('./more/TestPanel').then(({ TestPanel }) => TestPanel)),
} as const;
