import Link from 'next/link';
import styles from './AfterRun.module.css';

/** From what a run came to back to the run. */
export const WayBack = ({ runId, name }: Readonly<{ runId: string; name: string }>) => (
  <p className={styles.back}>
    <Link href={`/making/${encodeURIComponent(runId)}`}>
      <span aria-hidden="true">← </span>The run: {name}
    </Link>
  </p>
);
