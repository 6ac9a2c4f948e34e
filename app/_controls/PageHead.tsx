import type { ReactNode } from 'react';
import styles from './PageHead.module.css';

type PageHeadProps = Readonly<{
  title: ReactNode;
  /** One line beneath that says what this is. */
  line?: ReactNode;
  /** What stands opposite: a state in words, or the one thing to do here. */
  aside?: ReactNode;
}>;

/** The title of a screen. */
export function PageHead({ title, line, aside }: PageHeadProps) {
  return (
    <div className={styles.head}>
      <div>
        <h1>{title}</h1>
        {line && <p className={styles.line}>{line}</p>}
      </div>
      {aside && <div className={styles.aside}>{aside}</div>}
    </div>
  );
}
