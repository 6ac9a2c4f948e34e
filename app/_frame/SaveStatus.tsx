import Link from 'next/link';
import styles from './SaveStatus.module.css';

/** Whether what is on screen is also on this device. */
type SaveState =
  | Readonly<{ kind: 'keeping' }>
  | Readonly<{ kind: 'kept'; at: string }>
  | Readonly<{ kind: 'notKept'; why: string }>;

type SaveStatusProps = Readonly<{
  kept: SaveState;
  /** Whether there is something of the maker's own that a copy would save: then it leads there. */
  leadsToCopies?: boolean;
  onRetry?: () => void;
}>;

/** Says quietly that all is kept, and aloud when it is not. */
export function SaveStatus({ kept, leadsToCopies = false, onRetry }: SaveStatusProps) {
  if (kept.kind === 'notKept')
    return (
      <p className={styles.notKept} role="alert">
        <strong>Not kept.</strong> {kept.why}{' '}
        {onRetry && (
          <button className={styles.retry} type="button" onClick={onRetry}>
            Try again
          </button>
        )}
      </p>
    );
  return (
    <p className={styles.kept}>
      {kept.kind === 'keeping' ? (
        'Keeping…'
      ) : (
        <>
          {leadsToCopies ? (
            <Link className={styles.copies} href="/workshop#copies">
              {where}
              <span className="visuallyHidden">: make a copy</span>
            </Link>
          ) : (
            where
          )}{' '}
          · <time>{kept.at}</time>
        </>
      )}
    </p>
  );
}

// Helpers

const where = (
  <>
    Kept <span className={styles.where}>on this device</span>
  </>
);
