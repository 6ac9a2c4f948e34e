import Link from 'next/link';
import styles from './ExampleBand.module.css';

/** Says on an example that it is one, and where one's own begins. */
export function ExampleBand() {
  return (
    <p className={styles.band}>
      This is an invented example. Change anything, or <Link href="/start">start your own workshop</Link>.
    </p>
  );
}
