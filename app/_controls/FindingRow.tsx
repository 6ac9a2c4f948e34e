import type { ReactNode } from 'react';
import { Button } from './Button';
import { classes } from './classes';
import styles from './FindingRow.module.css';
import { type Severity, SeverityShape } from './SeverityShape';

type FindingRowProps = Readonly<{
  severity: Severity;
  /** What is wrong and what will happen. */
  sentence: ReactNode;
  /** What to do, or what it saves. */
  detail?: string | undefined;
  fix?: Readonly<{ label: string; onFix: () => void }> | undefined;
  id?: string | undefined;
  /** A form to go on in spite of it, with the reason. */
  children?: ReactNode;
}>;

/** A finding as a sentence with one button that mends it; a list item. */
export function FindingRow({ severity, sentence, detail, fix, id, children }: FindingRowProps) {
  return (
    <li className={classes(styles.row, styles[severity])} id={id}>
      <SeverityShape severity={severity} />
      <div>
        <p className={styles.sentence}>{sentence}</p>
        <p className={styles.detail}>
          <span className={styles.severity}>{names[severity]}</span>
          {detail && <> · {detail}</>}
        </p>
        {children}
      </div>
      {fix && (
        <div className={styles.fix}>
          <Button onPress={fix.onFix}>{fix.label}</Button>
        </div>
      )}
    </li>
  );
}

// Helpers

const names: Readonly<Record<Severity, string>> = { stop: 'Stop', caution: 'Caution', note: 'Note' };
