import { lazy } from '@/app/_network/lazy';

/** The engine that reads formulas, fetched when the first one is typed. */
export const lazyFormulaJudge = lazy(() =>
  import('./judgeOwnFormula').then(({ judgeOwnFormula }) => judgeOwnFormula),
);
