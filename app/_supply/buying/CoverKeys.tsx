'use client';

import { useId } from 'react';
import styles from '@/app/_supply/Supply.module.css';
import type { Formatter } from '@/app/_words/formatter';
import { coverFigure, coverReach, coverWords, dearerWords } from '@/app/_words/supply/buyingWords';
import type { CoverChoice } from '@/lib/buying/buyingPlan';
import type { Cover } from '@/shared/schemas/making/supply';

type CoverKeysProps = Readonly<{
  choices: readonly CoverChoice[];
  cover: Cover;
  formatter: Formatter;
  onChoose: (cover: Cover) => void;
}>;

/** How sure every size is to come out whole: three keys, each with its pieces, its reach and its cost. */
export function CoverKeys({ choices, cover, formatter, onChoose }: CoverKeysProps) {
  const name = useId();
  return (
    <fieldset className={styles.keys}>
      <legend className={styles.sub}>How sure every size is to be whole</legend>
      {choices.map((choice) => {
        const words = coverWords[choice.cover];
        const dearer = dearerWords(choice, formatter);
        return (
          <label className={styles.key} key={choice.cover}>
            <input
              type="radio"
              name={name}
              checked={choice.cover === cover}
              onChange={() => onChoose(choice.cover)}
            />
            <span>{words.name}</span>
            <strong>{coverFigure(choice, formatter)}</strong>
            <span className={styles.quiet}>{coverReach(choice, formatter)}</span>
            <span className={styles.for}>{words.for}</span>
            {dearer !== null && <span className={styles.quiet}>{dearer}</span>}
          </label>
        );
      })}
    </fieldset>
  );
}
