import { lazy } from '@/app/_network/lazy';

/** The words of all findings are many and wait for the sums, so screens that open with something else fetch them beside those. */
export const lazyFindingWords = lazy(() => import('./findingWords').then(({ findingWords }) => findingWords));
