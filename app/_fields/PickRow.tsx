'use client';

import { useId } from 'react';
import { classes } from '@/app/_controls/classes';
import styles from './PickRow.module.css';

type PickRowProps<Value extends string> = Readonly<{
  /** What is picked; read before the choices by a screen reader. */
  label: string;
  value: Value;
  choices: readonly Readonly<{ value: Value; label: string }>[];
  onPick: (value: Value) => void;
  /** Shown on phones only, where what it picks from does not fit side by side. */
  phoneOnly?: boolean;
}>;

/** A row of choices of which one is looked at; changes what is shown and nothing that is kept. */
export function PickRow<Value extends string>(props: PickRowProps<Value>) {
  const { label, value, choices, onPick, phoneOnly = false } = props;
  const name = useId();
  return (
    <fieldset className={classes(styles.set, phoneOnly && styles.phoneOnly)}>
      <legend className="visuallyHidden">{label}</legend>
      {choices.map((choice) => (
        <label className={styles.choice} key={choice.value}>
          <input
            className={styles.radio}
            type="radio"
            name={name}
            checked={choice.value === value}
            onChange={() => onPick(choice.value)}
          />
          <span className={styles.face}>{choice.label}</span>
        </label>
      ))}
    </fieldset>
  );
}
