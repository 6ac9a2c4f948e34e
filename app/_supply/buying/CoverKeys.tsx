'use client';

import { useId } from 'react';
import styles from '@/app/_supply/Supply.module.css';
import type { Formatter } from '@/app/_words/formatter';
import { coverNames } from '@/app/_words/making/coverNames';
import {
  coverFigure,
  coverFor,
  coverReach,
  coverReallyReaches,
  coverToPay,
  dearerWords,
} from '@/app/_words/supply/buyingWords';
import type { CoverOffer } from '@/lib/buying/buyingPlan';
import type { Cover } from '@/shared/schemas/making/supply';

type CoverKeysProps = Readonly<{
  choices: readonly CoverOffer[];
  cover: Cover;
  /** The maker typed a number of some blank. */
  isHeld: boolean;
  currency: string;
  locale: string;
  formatter: Formatter;
  onChoose: (cover: Cover) => void;
}>;

/** How sure every size is to come out whole: three keys, each with its pieces, its reach and its cost. */
export function CoverKeys({ choices, cover, isHeld, currency, locale, formatter, onChoose }: CoverKeysProps) {
  const name = useId();
  return (
    <fieldset className={styles.keys}>
      <legend className={styles.sub}>How sure every size is to be whole</legend>
      {choices.map((choice) => {
        const dearer = dearerWords(choice, formatter);
        const really = coverReallyReaches(choice, isHeld, formatter);
        return (
          <label className={styles.key} key={choice.cover}>
            <input
              type="radio"
              name={name}
              checked={choice.cover === cover}
              onChange={() => onChoose(choice.cover)}
            />
            <span>{coverNames[choice.cover]}</span>
            <strong>{coverFigure(choice, formatter)}</strong>
            <span className={styles.quiet}>{coverReach(choice, formatter)}</span>
            {really !== null && <span>{really}</span>}
            <span className={styles.quiet}>{coverToPay(choice, formatter, { currency, locale })}</span>
            <span className={styles.for}>{coverFor[choice.cover]}</span>
            {dearer !== null && <span className={styles.quiet}>{dearer}</span>}
          </label>
        );
      })}
    </fieldset>
  );
}
