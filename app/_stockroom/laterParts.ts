import { lazy } from '@/app/_network/lazy';

/** What is worked out behind the counts, fetched once they are seen. */
export const laterParts = {
  needs: lazy(() => import('@/app/_openWork/NeedsTold').then(({ NeedsTold }) => NeedsTold)),
} as const;
