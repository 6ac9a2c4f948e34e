import { lazy } from '@/app/_network/lazy';

/** What stands behind a button: it brings all that writes papers along. */
export const laterParts = {
  desk: lazy(() => import('./SupplyOrderDesk').then(({ SupplyOrderDesk }) => SupplyOrderDesk)),
} as const;
