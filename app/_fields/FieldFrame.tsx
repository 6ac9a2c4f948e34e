import type { ReactNode } from 'react';
import { classes } from '@/app/_controls/classes';
import { type Origin, OriginMark } from '@/app/_controls/OriginMark';
import styles from './FieldFrame.module.css';

type FieldFrameProps = Readonly<{
  id: string;
  label: string;
  unit?: string | undefined;
  origin?: Origin | undefined;
  /** How many runs a measured value rests on. */
  count?: number | undefined;
  /** True where a label for this id stands elsewhere, beside the field. */
  labelled?: boolean | undefined;
  hint?: string | undefined;
  /** What is worth a second look, though the value may stand. */
  caution?: string | undefined;
  /** What is wrong, as a sentence; spoken when it appears. */
  issue?: string | null | undefined;
  /** Something is on its way, and not wrong yet. */
  waiting?: boolean;
  width?: 'narrow' | 'normal' | 'full' | undefined;
  children: ReactNode;
}>;

/** What every field has in common: its name above, its unit after, its hint and its issue beneath. */
export function FieldFrame(props: FieldFrameProps) {
  const { id, label, unit, origin, count, labelled, hint, caution, issue } = props;
  const { waiting = false, width = 'normal', children } = props;
  return (
    <div className={classes(styles.frame, styles[width])}>
      {!labelled && (
        <div className={styles.head}>
          <label className={styles.label} htmlFor={id}>
            {label}
          </label>
          {origin && <OriginMark origin={origin} count={count} />}
        </div>
      )}
      <div className={classes(styles.box, origin && styles[origin], issue && !waiting && styles.wrong)}>
        {children}
        {unit && (
          <span className={styles.unit} id={`${id}-unit`}>
            {unit}
          </span>
        )}
      </div>
      {hint && (
        <p className={styles.hint} id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {caution && !issue && (
        <p className={styles.caution} id={`${id}-caution`}>
          {caution}
        </p>
      )}
      <p className={classes(styles.issue, waiting && styles.waiting)} id={`${id}-issue`} aria-live="polite">
        {issue}
      </p>
    </div>
  );
}
