import type { AnswerWords } from '@/app/_words/docket/answerWords';
import type { Formatter } from '@/app/_words/formatter';
import { jobFacts } from '@/lib/drafts/jobFacts';
import type { Job } from '@/shared/schemas/job';
import { minorMoney } from './minorWords';

/** @param count of jobs that the order names, those that are not here among them */
export function jobsAnswer(count: number, jobs: readonly Job[], formatter: Formatter): AnswerWords {
  if (count === 0) return { key: 'No job yet:', after: ' without one nothing can be quoted' };
  const pieces = jobs.reduce((sum, job) => sum + jobFacts(job).pieces, 0);
  return { key: formatter.count(pieces, 'piece'), after: ` in ${formatter.count(count, 'job')}` };
}

/** What papers ask for pieces of a job. */
interface AgreedPrices {
  /** Whole minor units, one for each row of a size. */
  readonly each: readonly number[];
  readonly currency: string;
  readonly locale: string;
}

/**
 * @param agreed null where none of its pieces was agreed on
 * @example '37 pieces, 19.00 USD to 21.50 USD each'
 */
export function jobLineWords(job: Job, agreed: AgreedPrices | null, formatter: Formatter): string {
  const { pieces, asked } = jobFacts(job);
  const price =
    agreed !== null
      ? `agreed at ${agreedRange(agreed)}`
      : asked === null
        ? 'no price asked yet'
        : eachWords(formatter.money(asked.from), formatter.money(asked.to));
  return `${formatter.count(pieces, 'piece')}, ${price}`;
}

// Helpers

function agreedRange({ each, currency, locale }: AgreedPrices): string {
  const [from, to] = [Math.min(...each), Math.max(...each)];
  return eachWords(minorMoney(from, currency, locale), minorMoney(to, currency, locale));
}

const eachWords = (from: string, to: string): string =>
  from === to ? `${from} each` : `${from} to ${to} each`;
