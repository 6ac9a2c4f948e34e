'use client';

import { wallAt } from '@/app/_clock/wallAt';
import { LaterPart } from '@/app/_network/LaterPart';
import { clockWords } from '@/app/_words/clockWords';
import { breakMarks, toGo } from '@/app/_words/stall/count/breakEvenWords';
import { keepingWords, keptWords, notKeptWords, shortAmount } from '@/app/_words/stall/count/countWords';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import { BreakEvenBar } from './BreakEvenBar';
import styles from './Head.module.css';
import { laterParts } from './laterParts';
import type { Counting } from './useCount';

/** What the day has come to so far, and whether it is kept. */
export function CountHead({ counting }: Readonly<{ counting: Counting }>) {
  const { workspace, plan, count, locale } = counting;
  const { kept } = workspace;
  const marks = breakMarks(plan);
  const next = toGo(marks, count.pieces);
  return (
    <div className={styles.head}>
      <div className={styles.top}>
        <h1 className={styles.title}>{plan.title}</h1>
        {kept.state !== 'notKept' && (
          <p className={styles.kept}>
            {kept.state === 'keeping' ? keepingWords : keptWords(clockWords(wallAt(kept.at).minute, locale))}
          </p>
        )}
      </div>
      {kept.state === 'notKept' && (
        <div className={styles.alarm} role="alert">
          <p>
            <strong>Not kept.</strong> {notKeptWords} {saveFailureWords[kept.why]}
          </p>
          <LaterPart
            part={laterParts.notKept}
            what="The way to save it as a file"
            props={{ workspace, plan }}
          />
        </div>
      )}
      <p className={styles.figures}>
        <span>
          <strong>{count.pieces}</strong> sold
        </span>
        <span>
          <strong>{shortAmount(count.grossMinor, plan.currency, locale)}</strong> {plan.currency} taken
        </span>
        {next !== null && (
          <span>
            <strong>{next.count}</strong> to go {next.aim}
          </span>
        )}
        {next === null && marks.length > 0 && <span>all earned</span>}
      </p>
      {marks.length > 0 ? (
        <BreakEvenBar marks={marks} sold={count.pieces} />
      ) : (
        <p className={styles.line}>The plan names no number of pieces at which the day pays for itself.</p>
      )}
    </div>
  );
}
