import { type BreakMark, barWords } from '@/app/_words/stall/count/breakEvenWords';
import styles from './Head.module.css';

/** Room behind the last mark, share of it. */
const BEYOND = 1.12;

/** How far the day is, against the pieces at which each sum is earned. */
export function BreakEvenBar({ marks, sold }: Readonly<{ marks: readonly BreakMark[]; sold: number }>) {
  const last = marks.at(-1)?.pieces ?? 0;
  const whole = Math.max(1, last * BEYOND, sold);
  const at = (pieces: number) => `${Math.round((Math.max(0, pieces) / whole) * 1000) / 10}%`;
  return (
    <div className={styles.bar}>
      <svg className={styles.drawing} role="img" aria-label={barWords(marks, sold)}>
        <defs>
          <linearGradient id="heat-of-the-day" x1="0" x2="1" y1="0" y2="0">
            <stop className={styles.cold} offset="0" />
            <stop className={styles.warm} offset="1" />
          </linearGradient>
        </defs>
        <rect className={styles.ground} width="100%" height="100%" rx="4" />
        <rect className={styles.earned} width={at(sold)} height="100%" rx="4" />
        {marks.map(({ pieces, words }) => (
          <line key={words} className={styles.mark} x1={at(pieces)} x2={at(pieces)} y1="0" y2="100%" />
        ))}
        <rect className={styles.edge} width="100%" height="100%" rx="4" />
      </svg>
      <p className={styles.marks} aria-hidden="true">
        {marks.map(({ pieces, words }) => (
          <span key={words} className={pieces <= sold ? styles.reached : undefined}>
            {pieces} {words}
            {pieces <= sold ? ' ✓' : ''}
          </span>
        ))}
      </p>
    </div>
  );
}
