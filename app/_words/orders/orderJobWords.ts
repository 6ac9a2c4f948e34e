import type { AnswerWords } from '@/app/_words/docket/answerWords';
import type { Formatter } from '@/app/_words/formatter';
import { jobFacts } from '@/lib/drafts/jobFacts';
import type { Job } from '@/shared/schemas/job';

/** @param count of jobs that the order names, those that are not here among them */
export function jobsAnswer(count: number, jobs: readonly Job[], formatter: Formatter): AnswerWords {
  if (count === 0) return { key: 'No job yet:', after: ' without one nothing can be quoted' };
  const pieces = jobs.reduce((sum, job) => sum + jobFacts(job).pieces, 0);
  return { key: formatter.count(pieces, 'piece'), after: ` in ${formatter.count(count, 'job')}` };
}

/** @example '37 pieces, 19.00 USD to 21.50 USD each' */
export function jobLineWords(job: Job, formatter: Formatter): string {
  const { pieces, asked } = jobFacts(job);
  const price =
    asked === null
      ? 'no price asked yet'
      : asked.from === asked.to
        ? `${formatter.money(asked.from)} each`
        : `${formatter.money(asked.from)} to ${formatter.money(asked.to)} each`;
  return `${formatter.count(pieces, 'piece')}, ${price}`;
}
