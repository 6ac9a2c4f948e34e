import styles from './NotYet.module.css';

/** Stands where figures will be; as tall as a small table, so that little moves when they come. */
export function NotYet({ what }: Readonly<{ what: string }>) {
  return <p className={styles.note}>{what} stand here once nothing under “Checks” stops the job.</p>;
}
