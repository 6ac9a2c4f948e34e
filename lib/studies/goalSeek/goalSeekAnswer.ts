import { costOffered } from '@/lib/costing/offeredJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import type { JobInput } from '@/shared/schemas/request';
import { wantedPieces } from '@/shared/wantedPieces';
import { batchForMargin } from './batchForMargin';
import { largestWage } from './largestWage';
import { priceForMargin } from './priceForMargin';
import { priceForPay } from './priceForPay';

/** What is sought; prices as the channel writes them, null for the job's own, asked or suggested. */
export type GoalSeekQuestion =
  | { readonly seek: 'priceForMargin'; readonly margin: number }
  | { readonly seek: 'priceForPay'; readonly perHour: number }
  | { readonly seek: 'batchForMargin'; readonly margin: number; readonly price: number | null }
  | { readonly seek: 'largestWage'; readonly price: number | null };

export type GoalSeekAnswer =
  | { readonly seek: 'priceForMargin'; readonly found: ReturnType<typeof priceForMargin> }
  | { readonly seek: 'priceForPay'; readonly found: ReturnType<typeof priceForPay> }
  | { readonly seek: 'batchForMargin'; readonly found: ReturnType<typeof batchForMargin> }
  | { readonly seek: 'largestWage'; readonly found: ReturnType<typeof largestWage> };

/** @returns what is sought of a job as it is ordered; null while it cannot be costed. */
export function goalSeekAnswer(
  input: JobInput,
  grid: Grid,
  question: GoalSeekQuestion,
): GoalSeekAnswer | null {
  const offered = costOffered(input, grid);
  if (offered === null) return null;
  const { costed } = offered;
  const n = wantedPieces(input.job.lines);
  switch (question.seek) {
    case 'priceForMargin':
      return { seek: question.seek, found: priceForMargin(costed, grid, n, question.margin) };
    case 'priceForPay':
      return { seek: question.seek, found: priceForPay(costed, grid, n, question.perHour) };
    case 'batchForMargin':
      return {
        seek: question.seek,
        found: batchForMargin(costed, grid, question.price ?? 'asked', question.margin),
      };
    case 'largestWage':
      return { seek: question.seek, found: largestWage(costed, grid, n, question.price ?? 'asked') };
    default:
      return question satisfies never;
  }
}
