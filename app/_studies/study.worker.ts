import { answerQuestions } from '@/app/_workers/answerQuestions';
import { Grid } from '@/lib/grid/evaluateGrid';
import type { JobInput } from '@/shared/schemas/request';
import { type StudyRequest, studies } from './studies';

/* Studies run here, beside the prices and with a grid of their own, so that prices never wait for them. */
const grid = new Grid();

answerQuestions(({ name, input, question }: StudyRequest) => {
  const study = studies[name] as (input: JobInput, grid: Grid, question: unknown) => unknown;
  return study(input, grid, question);
});
