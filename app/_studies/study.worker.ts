import { answerQuestions } from '@/app/_workers/answerQuestions';
import { thoroughInput } from '@/lib/costing/layoutQuestions';
import { Grid } from '@/lib/grid/evaluateGrid';
import { LayoutSearch } from '@/lib/layout/layoutSearch';
import type { JobInput } from '@/shared/schemas/request';
import { type StudyRequest, studies, thorough } from './studies';

/* Studies run here, beside the prices and with a grid of their own, so that prices never wait for them. */
const grid = new Grid();
const search = new LayoutSearch();

answerQuestions(({ name, input, question }: StudyRequest) => {
  const study = studies[name] as (input: JobInput, grid: Grid, question: unknown) => unknown;
  // Documents that come with layouts are asked beside prices made by those; others are told what those come to.
  const asked = input.layouts === undefined && thorough.has(name) ? thoroughInput(input, search) : input;
  return { answer: study(asked, grid, question), further: null };
});
