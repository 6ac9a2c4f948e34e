'use client';

import type { JobRecord } from '@/app/_documents/documentsByKind';
import { jobsWords } from '@/app/_words/jobs/jobListWords';
import type { JobFigures } from '@/lib/costing/jobFigures';
import type { Workshop } from '@/shared/schemas/workshop';
import styles from './JobList.module.css';

type JobsAnswerProps = Readonly<{
  kept: readonly JobRecord[];
  figuresOf: (kept: JobRecord) => JobFigures | null;
  workshop: Workshop;
}>;

/** What the jobs come to, in one line: how many pay what the maker wants an hour. */
export function JobsAnswer({ kept, figuresOf, workshop }: JobsAnswerProps) {
  const wage = workshop.rates.wage?.value ?? null;
  const figures = kept.map(figuresOf);
  const known = figures.filter((one) => one !== null);
  if (kept.length === 0) return <p className={styles.answer}>Every job is put away.</p>;
  if (known.length < figures.length)
    return (
      <p className={styles.answer}>
        {known.length} of {figures.length} jobs worked out…
      </p>
    );
  const paid = known.filter((one) => one.kind === 'priced');
  const pays = paid.filter(({ payPerHour }) => wage === null || payPerHour >= wage).length;
  const [first, rest] = jobsWords(
    { pays, less: paid.length - pays, stopped: known.length - paid.length },
    wage,
    workshop,
  );
  return (
    <p className={styles.answer}>
      <strong>{first}</strong>
      {rest !== '' && `; ${rest}`}
    </p>
  );
}
