'use client';

import { useId } from 'react';
import styles from './YesNo.module.css';

type YesNoProps = Readonly<{
  question: string;
  value: boolean | null;
  onAnswer: (value: boolean) => void;
  /** What follows from the answer, where something does. */
  hint?: string | undefined;
}>;

const answers = [
  { value: true, label: 'Yes' },
  { value: false, label: 'No' },
];

/** A question answered by yes or no; unanswered until somebody says. */
export function YesNo({ question, value, onAnswer, hint }: YesNoProps) {
  const name = useId();
  return (
    <fieldset className={styles.row} aria-describedby={hint === undefined ? undefined : `${name}-hint`}>
      <legend className={styles.question}>{question}</legend>
      <span className={styles.pair}>
        {answers.map((answer) => (
          <label key={answer.label} className={styles.answer}>
            <input
              className={styles.radio}
              type="radio"
              name={name}
              checked={value === answer.value}
              onChange={() => onAnswer(answer.value)}
            />
            {answer.label}
          </label>
        ))}
      </span>
      {hint !== undefined && (
        <p className={styles.hint} id={`${name}-hint`}>
          {hint}
        </p>
      )}
    </fieldset>
  );
}
