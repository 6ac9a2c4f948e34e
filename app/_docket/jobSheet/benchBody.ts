import { paperOfLocale } from '@/app/_priceLists/paperOfLocale';
import { jobSheetTable } from '@/app/_words/docket/jobSheetTable';
import { wantedDayWords } from '@/app/_words/docket/jobWords';
import type { TextContext } from '@/app/_words/formatter';
import type { JobSheetFacts } from '@/lib/jobSheet/jobSheet';
import type { JobSheetBody } from '@/lib/papers/bodies/jobSheetPaper';
import type { Finding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import { benchSteps } from './benchSteps';
import { watchNotes } from './watchNotes';

interface Bench {
  readonly facts: JobSheetFacts;
  readonly findings: readonly Finding[];
  readonly context: TextContext;
}

/** The words of a job's sheet are the app's own, whatever language the customer reads. */
const LANGUAGE = 'en';

/** What lies beside the press, in the order of the work; no cost stands on it. */
export function benchBody(input: JobInput, { facts, findings, context }: Bench): JobSheetBody {
  const { job, workshop, asOf } = input;
  const told = jobSheetTable;
  return {
    ...styleOf(input),
    locale: workshop.locale,
    of: 'job',
    job: job.name,
    pieces: facts.pieces,
    facts: [
      ...(job.customer === '' ? [] : [{ name: told.for, value: job.customer }]),
      {
        name: told.wanted,
        value: job.wantedOn === null ? told.noDay : wantedDayWords(job.wantedOn, asOf, workshop.locale),
      },
      ...(job.madeFor === 'stock' ? [{ name: told.made, value: told.toStock }] : []),
    ],
    ...benchSteps(input, { facts, context }),
    watch: watchNotes(findings, context),
  };
}

/** @returns what both pages of a job have in common. */
export const styleOf = ({ workshop }: Pick<JobInput, 'workshop'>) => ({
  page: workshop.papers.page ?? paperOfLocale(workshop.locale),
  language: LANGUAGE,
  workshop: workshop.seller.name.trim() === '' ? workshop.name : workshop.seller.name,
});
