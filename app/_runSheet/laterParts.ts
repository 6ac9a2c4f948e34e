import { lazy } from '@/app/_network/lazy';

/** The paper with its type is fetched when it is looked at. */
export const laterParts = {
  sheet: lazy(() => import('./RunSheet').then(({ RunSheet }) => RunSheet)),
} as const;
