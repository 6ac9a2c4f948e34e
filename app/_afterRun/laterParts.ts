import { lazy } from '@/app/_network/lazy';

/** What stands beneath the bridge, fetched behind it. */
export const laterParts = {
  changed: lazy(() => import('@/app/_runBook/RunChanged').then(({ RunChanged }) => RunChanged)),
  causes: lazy(() => import('@/app/_runBook/MissingCauses').then(({ MissingCauses }) => MissingCauses)),
  took: lazy(() => import('./TookSection').then(({ TookSection }) => TookSection)),
  lessons: lazy(() => import('./LessonsSection').then(({ LessonsSection }) => LessonsSection)),
  runs: lazy(() => import('./OverRunsSection').then(({ OverRunsSection }) => OverRunsSection)),
} as const;
