/** What is asked before a test press. */
export interface TestAsked {
  /** That the recipe is wrong, 0 to 1. */
  readonly doubt: number;
  /** Pieces that are pressed before it would be noticed. */
  readonly piecesAtRisk: number;
  /** Of one spoiled piece, currency units. */
  readonly lossEach: number;
  /** Sheet, scrap cloth and minutes of the test, currency units. */
  readonly cost: number;
}

/** @returns what a test saves on average, currency units, and whether that is more than it costs */
export function testWorth({ doubt, piecesAtRisk, lossEach, cost }: TestAsked): {
  readonly saves: number;
  readonly isWorth: boolean;
} {
  const saves = doubt * piecesAtRisk * lossEach;
  return { saves, isWorth: saves > cost };
}
