import { answerQuestions } from '@/app/_workers/answerQuestions';
import { thoroughInput } from '@/lib/costing/layoutQuestions';
import { Grid } from '@/lib/grid/evaluateGrid';
import { LayoutSearch } from '@/lib/layout/layoutSearch';
import type { RunQuestion } from '@/lib/making/study/runQuestion';
import type { QuoteAsked } from '@/lib/quotes/quoteAsked';
import type { JobInput } from '@/shared/schemas/request';

import {
  buyingStudies,
  openStudies,
  orderStudies,
  runStudies,
  type StudyRequest,
  stallStudies,
  studies,
  thorough,
} from './studies';

/* Studies run here, beside the prices and with a grid of their own, so that prices never wait for them. */
const grid = new Grid();
const search = new LayoutSearch();

answerQuestions((request: StudyRequest) => ({ answer: answerOf(request), further: null }));

function answerOf(request: StudyRequest): unknown {
  if (request.of === 'stall') return stallStudies[request.name](request.asked, grid);
  if (request.of === 'buying') {
    const { asked, name } = request;
    const works = asked.works.map((work) => ({ ...work, input: thoroughInput(work.input, search) }));
    return buyingStudies[name]({ ...asked, works }, grid);
  }
  if (request.of === 'open') {
    const { asked, name } = request;
    const open = asked.open.map((one) => ({ ...one, inputs: one.inputs.map(withLayout) }));
    return openStudies[name]({ ...asked, open }, grid);
  }
  if (request.of === 'run') return runStudies[request.name](withLayouts(request.asked), grid);
  const { question } = request;
  if (request.of === 'order') {
    const study = orderStudies[request.name] as (asked: QuoteAsked, grid: Grid, question: unknown) => unknown;
    const jobs = request.asked.jobs.map(({ jobId, input }) => ({
      jobId,
      input: thoroughInput(input, search),
    }));
    return study({ ...request.asked, jobs }, grid, question);
  }
  const { name, input } = request;
  const study = studies[name] as (input: JobInput, grid: Grid, question: unknown) => unknown;
  // Documents that come with layouts are asked beside prices made by those; others are told what those come to.
  const asked = input.layouts === undefined && thorough.has(name) ? thoroughInput(input, search) : input;
  return study(asked, grid, question);
}

/** What is pressed is what is printed: the sheets of a run are those its jobs end with. */
const withLayouts = (asked: RunQuestion): RunQuestion => ({
  ...asked,
  works: asked.works.map(({ work, input }) => ({
    work,
    input: withLayout(input),
  })),
});

function withLayout(input: JobInput | null): JobInput | null {
  return input === null ? null : thoroughInput(input, search);
}
