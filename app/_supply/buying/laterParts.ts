import { lazy } from '@/app/_network/lazy';

/** What is seen only once the plan is there. */
export const laterParts = {
  needs: lazy(() => import('./NeedTable').then(({ NeedTable }) => NeedTable)),
  suppliers: lazy(() => import('./SupplierParts').then(({ SupplierParts }) => SupplierParts)),
  folds: lazy(() => import('./BuyingFolds').then(({ BuyingFolds }) => BuyingFolds)),
} as const;
