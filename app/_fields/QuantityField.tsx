'use client';

import { useId } from 'react';
import { classes } from '@/app/_controls/classes';
import { wholePieces } from '@/app/_numbers/wholePieces';
import { describedBy } from './describedBy';
import styles from './QuantityField.module.css';
import { useNumberText } from './useNumberText';

type QuantityFieldProps = Readonly<{
  /** A size, or whatever is counted. */
  label: string;
  value: number | null;
  onCommit: (value: number | null) => void;
  onRest?: (() => void) | undefined;
  min?: number | undefined;
  max?: number | undefined;
  caution?: string | undefined;
  issue?: string | undefined;
  id?: string | undefined;
}>;

/** A small box for a count with its size above; stands in a `QuantityRow`, which has room for its issue. */
export function QuantityField(props: QuantityFieldProps) {
  const ownId = useId();
  const id = props.id ?? ownId;
  const { input, problem, waiting } = useNumberText({ ...props, ...wholePieces, min: props.min ?? 0 });
  const issue = problem ?? props.issue;
  return (
    <div className={styles.field}>
      <div className={styles.size}>
        <label className={styles.label} htmlFor={id}>
          {props.label}
        </label>
        <input
          {...input}
          className={classes(styles.box, !props.value && styles.none, issue && !waiting && styles.wrong)}
          id={id}
          aria-invalid={input['aria-invalid'] ?? (props.issue ? true : undefined)}
          aria-describedby={describedBy(id, { caution: issue ? undefined : props.caution, issue })}
        />
      </div>
      {props.caution && !issue && (
        <p className={styles.caution} id={`${id}-caution`}>
          {`${props.label}: ${props.caution}`}
        </p>
      )}
      <p className={classes(styles.issue, waiting && styles.waiting)} id={`${id}-issue`} aria-live="polite">
        {issue && `${props.label}: ${issue}`}
      </p>
    </div>
  );
}
