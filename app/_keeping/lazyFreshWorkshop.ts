import { lazy } from '@/app/_network/lazy';

/** Hardly anybody ever needs it, so its code is fetched only then. */
export const lazyFreshWorkshop = lazy(() =>
  import('./FreshWorkshop').then(({ FreshWorkshop }) => FreshWorkshop),
);
