import { lazy } from '@/app/_network/lazy';

/** A run that was begun; it has later parts of its own. */
export const laterBegun = lazy(() => import('./begun/BegunRun').then(({ BegunRun }) => BegunRun));
