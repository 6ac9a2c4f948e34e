import { lazy } from '@/app/_network/lazy';

/** Parts of the year that are fetched behind what is seen first. */
export const laterParts = {
  sums: lazy(() => import('./reckonYear').then(({ reckonYear }) => reckonYear)),
  expense: lazy(() => import('@/app/_order/money/ExpenseNote').then(({ ExpenseNote }) => ExpenseNote)),
  hours: lazy(() => import('./HoursNote').then(({ HoursNote }) => HoursNote)),
  csv: lazy(() => import('./CsvButton').then(({ CsvButton }) => CsvButton)),
} as const;
