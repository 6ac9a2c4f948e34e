import { wantedDayWords } from '@/app/_words/docket/jobWords';
import type { JobInput } from '@/shared/schemas/request';
import styles from './JobSheet.module.css';

type SheetHeadProps = Readonly<{
  input: JobInput;
  /** What the page is: “Job sheet”. */
  kind: string;
  /** Large, at the end. */
  figure?: string;
}>;

/** Whose job it is and when it is wanted. */
export function SheetHead({ input: { job, workshop, asOf }, kind, figure }: SheetHeadProps) {
  return (
    <header className={styles.head}>
      <div>
        <h2 className={styles.title}>
          {kind}: <bdi>{job.name}</bdi>
        </h2>
        <p>
          {job.customer !== '' && (
            <>
              for <bdi>{job.customer}</bdi>,{' '}
            </>
          )}
          {job.wantedOn === null
            ? 'no day set'
            : `wanted ${wantedDayWords(job.wantedOn, asOf, workshop.locale)}`}
          {job.madeFor === 'stock' && ', made to stock'}
        </p>
      </div>
      {figure !== undefined && <p className={styles.figure}>{figure}</p>}
    </header>
  );
}
