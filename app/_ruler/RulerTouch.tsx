'use client';

import { useState } from 'react';
import styles from './RulerTouch.module.css';
import type { RulerMark } from './rulerMark';

type RulerTouchProps = Readonly<{
  /** In the order of their values. */
  marks: readonly RulerMark[];
  format: (value: number) => string;
}>;

/** Where names find no room: the figure of every mark, and beneath them the name of the one that is touched. */
export function RulerTouch({ marks, format }: RulerTouchProps) {
  const [picked, setPicked] = useState('target');
  const shown = marks.find(({ id }) => id === picked) ?? marks[0];
  return (
    <>
      <ul className={styles.cells}>
        {marks.map(({ id, label, value }) => (
          <li key={id}>
            <button
              className={styles.cell}
              type="button"
              aria-label={`${label} ${format(value)}`}
              aria-pressed={id === shown?.id}
              onClick={() => setPicked(id)}
              onFocus={() => setPicked(id)}
            >
              {format(value)}
            </button>
          </li>
        ))}
      </ul>
      <p className={styles.told} aria-hidden="true">
        {shown === undefined ? '\u00a0' : `${shown.label} ${format(shown.value)}`}
      </p>
    </>
  );
}
