import { lazy } from '@/app/_network/lazy';

/** What is folded away, fetched behind what is seen first. */
export const laterParts = {
  rows: lazy(() => import('./PriceTable').then(({ PriceTable }) => PriceTable)),
  sets: lazy(() => import('./SetFields').then(({ SetFields }) => SetFields)),
  late: lazy(() => import('./LateFields').then(({ LateFields }) => LateFields)),
  seconds: lazy(() => import('./SecondsField').then(({ SecondsField }) => SecondsField)),
  papers: lazy(() => import('./PricePapers').then(({ PricePapers }) => PricePapers)),
} as const;
