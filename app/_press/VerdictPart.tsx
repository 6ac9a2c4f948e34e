'use client';

import { ordinal } from '@/app/_words/press/ordinal';
import { scrapSoFar, tappedWords } from '@/app/_words/press/pressWords';
import type { AtThePress } from './usePressing';
import styles from './Verdict.module.css';

/** What became of the one just lifted: one tap each, kept at once. */
export function VerdictPart({ pressing }: Readonly<{ pressing: AtThePress }>) {
  const { turn, judged, judge, last, at, problem } = pressing;
  const counts = turn.counts.find(({ size }) => size === judged);
  const isWaiting = at.lifted.length > 0 || at.inPress?.phase === 'press';
  return (
    <section className={styles.part} aria-labelledby="just-lifted">
      <div className={styles.top}>
        <h2 id="just-lifted" className={styles.heading}>
          {isWaiting || at.inPress !== null ? 'The one just lifted' : 'The next one lifted'}
        </h2>
        <p>
          {judged}
          {counts !== undefined && counts.toGo > 0 && `, ${ordinal(counts.needed - counts.toGo + 1)}`}
          {at.lifted.length > 1 && `; ${at.lifted.length} to judge`}
        </p>
      </div>
      <div className={styles.keys}>
        <button type="button" className={styles.good} onClick={() => judge('good')}>
          <span className={styles.word}>Good</span>
          <span>
            {turn.good} so far of {turn.wanted}
          </span>
        </button>
        <button type="button" className={styles.scrap} onClick={() => judge('scrap')}>
          <span className={styles.word}>Scrap</span>
          <span className={styles.under}>{scrapSoFar(turn)}</span>
        </button>
      </div>
      {turn.isLast && (
        <button type="button" className={styles.slim} onClick={() => judge('second')}>
          Second, sold for less{turn.seconds > 0 && ` · ${turn.seconds}`}
        </button>
      )}
      <p role="alert">{problem}</p>
      <p className="visuallyHidden" aria-live="polite">
        {last?.kind === 'pressing' ? tappedWords(last.body) : ''}
      </p>
    </section>
  );
}
