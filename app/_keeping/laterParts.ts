import { lazy } from '@/app/_network/lazy';

/** What hardly anybody ever needs, so that its code is fetched only then. */
export const laterParts = {
  freshWorkshop: lazy(() => import('./FreshWorkshop').then(({ FreshWorkshop }) => FreshWorkshop)),
  copies: lazy(() => import('@/app/_copies/CopiesPart').then(({ CopiesPart }) => CopiesPart)),
  unreadableList: lazy(() => import('./UnreadableList').then(({ UnreadableList }) => UnreadableList)),
} as const;
