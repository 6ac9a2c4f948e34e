import { lazy } from '@/app/_network/lazy';

/** Parts of the workshop that are fetched behind what is seen first. */
export const laterParts = {
  ink: lazy(() => import('./ink/InkRecord').then(({ InkRecord }) => InkRecord)),
  ownRows: lazy(() => import('./OwnRowsSection').then(({ OwnRowsSection }) => OwnRowsSection)),
  hours: lazy(() => import('./hours/HoursFields').then(({ HoursFields }) => HoursFields)),
  seller: lazy(() => import('./papers/SellerFields').then(({ SellerFields }) => SellerFields)),
  papers: lazy(() => import('./papers/PaperFields').then(({ PaperFields }) => PaperFields)),
  quoting: lazy(() => import('./papers/QuotingFields').then(({ QuotingFields }) => QuotingFields)),
} as const;
