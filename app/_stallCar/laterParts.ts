import { lazy } from '@/app/_network/lazy';

/** What is folded away, fetched behind what is seen first. */
export const laterParts = {
  float: lazy(() => import('./FloatFields').then(({ FloatFields }) => FloatFields)),
  take: lazy(() => import('./TakeAlong').then(({ TakeAlong }) => TakeAlong)),
  paper: lazy(() => import('./CarPaper').then(({ CarPaper }) => CarPaper)),
  phone: lazy(() => import('./PhoneFiles').then(({ PhoneFiles }) => PhoneFiles)),
} as const;
