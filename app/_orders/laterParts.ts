import { lazy } from '@/app/_network/lazy';

/** Parts of the board that are fetched behind what is seen first, or when they are asked for. */
export const laterParts = {
  bench: lazy(() => import('./BenchWeeks').then(({ BenchWeeks }) => BenchWeeks)),
  repeat: lazy(() => import('./RepeatPanel').then(({ RepeatPanel }) => RepeatPanel)),
} as const;
