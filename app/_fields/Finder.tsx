'use client';

import type { ReactNode } from 'react';
import styles from './Finder.module.css';

type FinderProps = Readonly<{
  /** The id of the field in which one types what is looked for. */
  id: string;
  /** What can be found, as “Find a name or number”. */
  label: string;
  text: string;
  onText: (text: string) => void;
  /** Further choices in the row of the field. */
  beside?: ReactNode;
  /** Those that are else left out; null where there are none. */
  also?: Readonly<{ words: string; isShown: boolean; onShown: (isShown: boolean) => void }> | null;
  /** Further choices in a row of their own. */
  below?: ReactNode;
  /** How many are found; nothing where nothing is looked for. */
  result: ReactNode;
  /** What can be done where little is found. */
  children?: ReactNode;
}>;

/** Finds rows of a list by what is typed, and says how many it found. */
export function Finder(props: FinderProps) {
  const { id, label, text, onText, beside, also = null, below, result, children } = props;
  return (
    <div className={styles.finder}>
      <div className={styles.row}>
        <label className="visuallyHidden" htmlFor={id}>
          {label}
        </label>
        <input
          className={styles.search}
          id={id}
          type="search"
          autoComplete="off"
          placeholder={label}
          value={text}
          onChange={(event) => onText(event.target.value)}
        />
        {beside}
        {also !== null && (
          <button
            className={styles.also}
            type="button"
            aria-pressed={also.isShown}
            onClick={() => also.onShown(!also.isShown)}
          >
            {also.words}
          </button>
        )}
      </div>
      {below}
      <p className={styles.result} role="status">
        {result}
      </p>
      {children}
    </div>
  );
}
