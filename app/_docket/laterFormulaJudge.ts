import { later } from '../_network/later';

/** The engine that reads formulas, fetched when the first one is typed. */
export const laterFormulaJudge = later(() =>
  import('./judgeOwnFormula').then(({ judgeOwnFormula }) => judgeOwnFormula),
);
