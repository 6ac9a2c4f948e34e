'use client';

import styles from './TraceTrail.module.css';

type TraceTrailProps = Readonly<{
  /** From the figure that was pressed to the one in view. */
  names: readonly string[];
  onBack: (index: number) => void;
}>;

/** The way down so far; each step leads back. */
export function TraceTrail({ names, onBack }: TraceTrailProps) {
  return (
    <nav className={styles.trail} aria-label="The way down to this figure">
      <ol className={styles.steps}>
        {names.map((name, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the same figure may stand on the way twice
          <li className={styles.step} key={index}>
            {index === names.length - 1 ? (
              <span aria-current="step">{name}</span>
            ) : (
              <button className={styles.back} type="button" onClick={() => onBack(index)}>
                {name}
              </button>
            )}
          </li>
        ))}
      </ol>
    </nav>
  );
}
