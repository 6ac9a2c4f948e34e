import { lazy } from '@/app/_network/lazy';

/** What is not seen at once, fetched when it is asked for. */
export const laterParts = {
  newRun: lazy(() => import('./NewRun').then(({ NewRun }) => NewRun)),
  changed: lazy(() => import('@/app/_runBook/RunChanged').then(({ RunChanged }) => RunChanged)),
  cameTo: lazy(() => import('./RunCameTo').then(({ RunCameTo }) => RunCameTo)),
} as const;
