import { lazy } from '@/app/_network/lazy';

/** Parts of the workshop that are fetched behind what is seen first. */
export const laterParts = {
  ink: lazy(() => import('./InkRecord').then(({ InkRecord }) => InkRecord)),
  ownRows: lazy(() => import('./OwnRowsSection').then(({ OwnRowsSection }) => OwnRowsSection)),
  hours: lazy(() => import('./HoursFields').then(({ HoursFields }) => HoursFields)),
  seller: lazy(() => import('./SellerFields').then(({ SellerFields }) => SellerFields)),
  papers: lazy(() => import('./PaperFields').then(({ PaperFields }) => PaperFields)),
  quoting: lazy(() => import('./QuotingFields').then(({ QuotingFields }) => QuotingFields)),
} as const;
