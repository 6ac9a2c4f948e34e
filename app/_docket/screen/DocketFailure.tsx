import styles from './DocketFailure.module.css';

/** Says that the sums themselves failed, which is our fault, and what to do. */
export function DocketFailure({ why }: Readonly<{ why: string }>) {
  return (
    <div className={styles.failure} role="alert">
      <p>
        <strong>The sums could not be made.</strong> That is a fault of this page and not of your job. What
        you typed is kept; the figures below are the last good ones. Undo your last change or reload the page;
        if it stays, keep a copy of your work in the workshop.
      </p>
      <p className={styles.why}>{why}</p>
    </div>
  );
}
