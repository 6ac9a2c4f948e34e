import type { Response } from '@/app/_workers/answerQuestions';
import { type BatchLayouts, batchQuestions } from '@/lib/costing/batchLayouts';
import { questionsOf } from '@/lib/costing/layoutQuestions';
import { type JobAnswer, priceJob } from '@/lib/costing/priceJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { knownSheets } from '@/lib/layout/knownSheets';
import type { LayoutSearch, SharedLook } from '@/lib/layout/layoutSearch';
import { asPrints, type SharedQuestion } from '@/lib/layout/sharedQuestion';
import { drawnSheets } from '@/lib/layout/sheetsOf';
import type { KnownLayouts } from '@/shared/packedSheets';
import type { JobInput } from '@/shared/schemas/request';

/** The prices of a job, with the layouts of its shared sheets that they were made by. */
export interface LaidOutAnswer {
  readonly answer: JobAnswer;
  /** Undefined where no sheets are shared. */
  readonly layouts: KnownLayouts | undefined;
  /** Null where no sheets are shared. */
  readonly shared: Omit<SharedLook, 'isLooking'> | null;
}

/** What the worker remembers of shared sheets. */
interface LaidOutMemory {
  readonly search: LayoutSearch;
  readonly batches: BatchLayouts;
}

/**
 * Prices a job by the layouts known so far, and anew whenever looking on finds better ones; then once more with its
 * other batches packed.
 */
export function laidOutAnswers(
  input: JobInput,
  grid: Grid,
  { search, batches }: LaidOutMemory,
): Response<LaidOutAnswer> {
  let questions: readonly SharedQuestion[] = [];
  let others: readonly SharedQuestion[] = [];
  // The job's own layouts are looked for longer than those of its batches.
  const known = () => ({ ...batches.known(others), ...search.known(questions) });
  const answer = (): LaidOutAnswer => {
    const answered = priceJob(input, grid, (checked) => {
      questions = questionsOf(checked);
      others = batchQuestions({ ...checked, layouts: search.known(questions) });
      return known();
    });
    const layouts = questions.length === 0 ? undefined : known();
    return { answer: answered, layouts, shared: shared(answered.layout, questions, search) };
  };
  function* further(): Generator<LaidOutAnswer | null, void> {
    for (const isBetter of search.goOn(questions)) yield isBetter ? answer() : null;
    if (batches.isAtEnd(others)) return;
    for (const _ of batches.goOn(others)) yield null;
    yield answer();
  }
  const first = answer();
  return { answer: first, further: search.isAtEnd(questions) && batches.isAtEnd(others) ? null : further() };
}

/** By the same layout as the prices, so that both change at once. */
function shared(
  prints: JobAnswer['layout'],
  questions: readonly SharedQuestion[],
  search: LayoutSearch,
): LaidOutAnswer['shared'] {
  const [whole] = questions;
  const spared = search.spared(questions);
  const packed = whole === undefined ? null : knownSheets(search.known(questions), whole);
  if (prints === null || whole === undefined || packed === null || spared === null) return null;
  if (prints.every(({ ganged }) => ganged === undefined)) return null;
  return {
    spared,
    drawn: drawnSheets(prints, asPrints(packed, whole), whole.isRoll ? whole.request : undefined),
  };
}
