import { lazy } from '@/app/_network/lazy';

/** What works the plan out, and what is seen only once it is there. */
export const laterParts = {
  plan: lazy(() => import('./PlanTold').then(({ PlanTold }) => PlanTold)),
  works: lazy(() => import('./ListWorks').then(({ ListWorks }) => ListWorks)),
  needs: lazy(() => import('./NeedTable').then(({ NeedTable }) => NeedTable)),
  notSetUp: lazy(() => import('./NotSetUp').then(({ NotSetUp }) => NotSetUp)),
  suppliers: lazy(() => import('./SupplierParts').then(({ SupplierParts }) => SupplierParts)),
  folds: lazy(() => import('./BuyingFolds').then(({ BuyingFolds }) => BuyingFolds)),
} as const;
