'use client';

import { classes } from '@/app/_controls/classes';
import { sparesOfWords } from '@/app/_words/press/pressWords';
import { sparesWords } from '@/app/_words/press/sparesWords';
import { sizesAhead } from '@/lib/pressing/atPress';
import styles from './Spares.module.css';
import type { AtThePress } from './usePressing';

/** Spares by size in pressing order; a tap on a size presses it next. */
export function SparesPart({ pressing }: Readonly<{ pressing: AtThePress }>) {
  const { turn, at, setAt } = pressing;
  const now = at.inPress?.size ?? sizesAhead(turn, at)[0];
  const isShared = turn.counts.some((counts) => counts.isShared);
  const done = turn.counts.filter(({ toGo }) => toGo === 0).map(({ size }) => size);
  return (
    <section className={styles.part} aria-label="Spares left">
      <p className={styles.top}>
        <span>{sparesOfWords(isShared ? turn.blankName : null)}</span>
        {done.length > 0 && <span>{done.join(', ')} done</span>}
      </p>
      <div className={styles.sizes}>
        {turn.counts.map((counts) => {
          const { size, toGo, sparesLeft } = counts;
          return (
            <button
              key={size}
              type="button"
              className={classes(
                styles.size,
                toGo === 0 && styles.done,
                sparesLeft <= 0 && styles.none,
                size === now && styles.now,
              )}
              aria-pressed={at.size === size}
              onClick={() => setAt({ ...at, size: at.size === size ? null : size })}
            >
              <span className={classes(styles.name, size.length > 3 && styles.long)}>{size}</span>
              <span>{sparesWords(counts)}</span>
              <span className="visuallyHidden">
                {toGo === 0 ? 'done' : `${toGo} to go`}; press this size next
              </span>
            </button>
          );
        })}
      </div>
    </section>
  );
}
