import type { WorkerFailure } from '@/app/_network/workerFailure';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import styles from './DocketFailure.module.css';

/** Says that there are no new sums, what of, and what to do. */
export function DocketFailure({ failure }: Readonly<{ failure: WorkerFailure }>) {
  if (failure.kind !== 'failed')
    return (
      <div className={styles.room}>
        <AnswerMissing what="There are no new sums" failure={failure} />
      </div>
    );
  return (
    <div className={styles.failure} role="alert">
      <p>
        <strong>The sums could not be made.</strong> That is a fault of this page and not of your job. What
        you typed is kept; the figures below are the last good ones. Undo your last change or reload the page;
        if it stays, keep a copy of your work in the workshop.
      </p>
      <p className={styles.why}>{failure.why}</p>
    </div>
  );
}
