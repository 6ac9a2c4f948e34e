import { lazy } from '@/app/_network/lazy';

/** What stands beneath the bridge, fetched behind it. */
export const laterParts = {
  took: lazy(() => import('./TookSection').then(({ TookSection }) => TookSection)),
  lessons: lazy(() => import('./LessonsSection').then(({ LessonsSection }) => LessonsSection)),
  runs: lazy(() => import('./OverRunsSection').then(({ OverRunsSection }) => OverRunsSection)),
} as const;
