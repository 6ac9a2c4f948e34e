import { batchedInput } from '@/lib/costing/batchLayouts';
import { costInput } from '@/lib/costing/costInput';
import { thoroughInput } from '@/lib/costing/layoutQuestions';
import { type ListInversion, listInversions } from '@/lib/studies/breaks/listInversions';
import { batchCurve, type CurveQuestion } from '@/lib/studies/curve/batchCurve';
import type { BatchPoint } from '@/lib/studies/curve/batchPoint';
import { batchTariffs } from '@/lib/studies/curve/batchTariffs';
import type { Tariff } from '@/lib/studies/curve/fitTariff';
import { jobInputSchema } from '@/shared/schemas/request';
import { answerRequest, dated, type EdgeAnswer } from './answerRequest';
import { edgeBatches, edgeGrid, edgeLayouts } from './edgeGrid';

/** What is asked beside the prices: money of whole batches without tax, unrounded; margins 0 to 1. */
interface CurveAnswer {
  /** Null while prices are withheld. */
  readonly curve: readonly BatchPoint[] | null;
  readonly tariff: Tariff | null;
  /** Of the lists as they are sold. */
  readonly inversions: readonly ListInversion[] | null;
}

/**
 * The answer to a request with its batch curve, its two-part tariff and the inversions of its lists as they are sold.
 *
 * @param request anything at all
 * @param today used where the request does not name its day, YYYY-MM-DD
 * @param question a range that `checkCurveRange` has passed
 */
export function answerCurve(
  request: unknown,
  today: string,
  question: CurveQuestion,
): EdgeAnswer & Partial<CurveAnswer> {
  const answer = answerRequest(request, today);
  if (answer.kind === 'unusable') return answer;
  const withheld = { ...answer, curve: null, tariff: null, inversions: null };
  const parsed = jobInputSchema.safeParse(dated(request, today));
  if (answer.prices === null || !parsed.success) return withheld;
  const grid = edgeGrid();
  const costed = costInput(batchedInput(thoroughInput(parsed.data, edgeLayouts), edgeBatches), grid);
  if (costed === null) return withheld;
  const points = batchCurve(costed, grid, question);
  return {
    ...answer,
    curve: points.ok ? points.value : null,
    tariff: batchTariffs(costed, grid)?.target ?? null,
    inversions: listInversions(answer.prices.lists, answer.prices.currency),
  };
}
