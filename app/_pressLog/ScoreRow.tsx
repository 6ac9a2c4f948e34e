'use client';

import { traitWords } from '@/app/_words/press/testWords';
import type { ScoredTrait } from '@/lib/pressing/testScores';
import styles from './Log.module.css';

type ScoreRowProps = Readonly<{
  trait: ScoredTrait;
  value: number | null;
  onChange: (value: number | null) => void;
}>;

/** One trait and its five keys; the one that stands, tapped again, takes the score away. */
export const ScoreRow = ({ trait, value, onChange }: ScoreRowProps) => (
  <fieldset className={styles.score}>
    <legend>{traitWords[trait]}</legend>
    <div className={styles.five}>
      {[1, 2, 3, 4, 5].map((score) => (
        <button
          key={score}
          type="button"
          className={styles.key}
          aria-pressed={value === score}
          aria-label={`${traitWords[trait]}: ${score}`}
          onClick={() => onChange(value === score ? null : score)}
        >
          {score}
        </button>
      ))}
    </div>
  </fieldset>
);
