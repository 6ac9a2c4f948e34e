import { later } from '@/app/_network/later';

/** The engine that reads formulas, fetched when the first one is typed. */
export const laterFormulaJudge = later(() =>
  import('@/app/_ownRows/judgeOwnFormula').then(({ judgeOwnFormula }) => judgeOwnFormula),
);
