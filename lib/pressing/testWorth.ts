import { z } from '@/shared/schemas/z';

/** What is asked before a test press. */
export const testAskedSchema = z.strictObject({
  /** That the recipe is wrong. */
  doubt: z.number().min(0).max(1),
  /** Pieces that are pressed before it would be noticed. */
  piecesAtRisk: z.int().min(0).max(100_000),
  /** Of one spoiled piece, currency units. */
  lossEach: z.number().min(0).max(1e6),
  /** Sheet, scrap cloth and minutes of the test, currency units. */
  cost: z.number().min(0).max(1e6),
});

/** @returns what a test saves on average, currency units, and whether that is more than it costs */
export function testWorth({ doubt, piecesAtRisk, lossEach, cost }: z.infer<typeof testAskedSchema>): {
  readonly saves: number;
  readonly isWorth: boolean;
} {
  const saves = doubt * piecesAtRisk * lossEach;
  return { saves, isWorth: saves > cost };
}
