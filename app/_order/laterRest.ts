import { lazy } from '@/app/_network/lazy';

/** What stands beneath; it has later parts of its own. */
export const laterRest = lazy(() => import('./RestOfOrder').then(({ RestOfOrder }) => RestOfOrder));
