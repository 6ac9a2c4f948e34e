'use client';

import { useId } from 'react';
import styles from './CheckField.module.css';
import { describedBy } from './describedBy';

type CheckFieldProps = Readonly<{
  label: string;
  checked: boolean;
  onCommit: (checked: boolean) => void;
  hint?: string | undefined;
  caution?: string | undefined;
  issue?: string | undefined;
  id?: string | undefined;
}>;

/** Yes or no, with the sentence it stands for beside it. */
export function CheckField(props: CheckFieldProps) {
  const { label, checked, onCommit, hint, caution, issue, id: givenId } = props;
  const ownId = useId();
  const id = givenId ?? ownId;
  return (
    <div>
      <label className={styles.label} htmlFor={id}>
        <input
          className={styles.box}
          id={id}
          type="checkbox"
          checked={checked}
          aria-invalid={issue ? true : undefined}
          aria-describedby={describedBy(id, { hint, caution: issue ? undefined : caution, issue })}
          onChange={(event) => onCommit(event.target.checked)}
        />
        {label}
      </label>
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
      <p className={styles.issue} id={`${id}-issue`} aria-live="polite">
        {issue}
      </p>
    </div>
  );
}
