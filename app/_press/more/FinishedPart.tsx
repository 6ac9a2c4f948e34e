'use client';

import { ButtonLink } from '@/app/_controls/ButtonLink';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { doneWords, lostByWords } from '@/app/_words/press/doneWords';
import { pressedSummary } from '@/lib/pressing/pressedSummary';
import styles from '../Done.module.css';
import type { AtThePress } from '../usePressing';

/** Everything is pressed: what came of each size, what was lost and by what, and the way to what it came to. */
export function FinishedPart({ pressing: { run, runId } }: Readonly<{ pressing: AtThePress }>) {
  const formatter = formatterFor(useTextContext());
  const { number } = formatter;
  const made = pressedSummary(run);
  const { head } = doneWords;
  const isOneLine = new Set(made.sizes.map(({ jobId, lineId }) => `${jobId} ${lineId}`)).size === 1;
  const row = (one: Pick<typeof made, 'wanted' | 'good' | 'seconds' | 'lost'>) => (
    <>
      <td>{doneWords.of(number(one.good), number(one.wanted))}</td>
      {made.seconds > 0 && <td>{number(one.seconds)}</td>}
      <td>{number(one.lost)}</td>
    </>
  );
  return (
    <section className={styles.part} aria-labelledby="all-pressed">
      <h2 className={styles.heading} id="all-pressed">
        {made.toGo === 0 ? doneWords.all : doneWords.short(formatter.count(made.toGo, 'piece'))}
      </h2>
      <table className={styles.table} aria-label={doneWords.table}>
        <thead>
          <tr>
            <th scope="col">{head.size}</th>
            <th scope="col">{head.good}</th>
            {made.seconds > 0 && <th scope="col">{head.seconds}</th>}
            <th scope="col">{head.lost}</th>
          </tr>
        </thead>
        <tbody>
          {made.sizes.map((one) => (
            <tr key={`${one.jobId} ${one.lineId} ${one.size}`}>
              <th scope="row">{isOneLine ? one.size : `${one.size}, ${one.lineName}`}</th>
              {row(one)}
            </tr>
          ))}
          <tr className={styles.all}>
            <th scope="row">{doneWords.inAll}</th>
            {row(made)}
          </tr>
        </tbody>
      </table>
      <p>{lostByWords(made, formatter)}</p>
      <div className={styles.ways}>
        <ButtonLink kind="strong" href={`/making/${encodeURIComponent(runId)}/after`}>
          {doneWords.after}
        </ButtonLink>
        <ButtonLink href={`/making/${encodeURIComponent(runId)}`}>{doneWords.run}</ButtonLink>
      </div>
    </section>
  );
}
