'use client';

import { useEffect, useRef } from 'react';
import { classes } from '@/app/_controls/classes';
import { faultNames, moveWords } from '@/app/_words/press/faultWords';
import { twiceHead, twiceThen } from '@/app/_words/press/pressWords';
import { likelyFaults } from '@/lib/pressing/likelyFaults';
import type { PressedEntry } from '@/lib/pressing/pressedEntry';
import { nextMove } from '@/lib/pressing/testTrail';
import type { AtThePress } from './usePressing';
import styles from './Verdict.module.css';

type CausePartProps = Readonly<{ pressing: AtThePress; asked: PressedEntry }>;

/** What is wrong with it, by one tap; the one that would make it twice running says so before it is tapped. */
export function CausePart({ pressing, asked }: CausePartProps) {
  const { run, turn, at, setAt, nameFault, noteInstead } = pressing;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const before = turn.pressed.at(turn.pressed.findIndex(({ id }) => id === asked.id) - 1);
  const running = turn.pressed.length > 1 ? (before?.body.fault ?? null) : null;
  const move = running === null ? null : nextMove(running);
  return (
    <section className={styles.part} aria-labelledby="what-is-wrong">
      <div className={styles.top}>
        <h2 id="what-is-wrong" className={styles.heading} ref={heading} tabIndex={-1}>
          What is wrong with it
        </h2>
        <p>
          {asked.body.size}, {asked.body.result}
        </p>
      </div>
      <div className={styles.tiles}>
        {likelyFaults(run.pressed).map((fault) => (
          <button
            key={fault}
            type="button"
            className={classes(styles.tile, fault === running && styles.running)}
            onClick={() => nameFault(asked, fault)}
          >
            {faultNames[fault]}
          </button>
        ))}
        {turn.slot === 0 && asked.body.result === 'scrap' && (
          <button type="button" className={styles.tile} onClick={() => noteInstead(asked, 'blankFault')}>
            Blank fault
            <span className={styles.under}>found before it was pressed</span>
          </button>
        )}
      </div>
      {running !== null && running !== 'other' && (
        <p className={styles.before}>
          The one before: {faultNames[running].toLowerCase()}. <strong>{twiceHead(running)}.</strong>{' '}
          {move !== null && moveWords[move]} {twiceThen}
        </p>
      )}
      <div className={styles.pair}>
        <button type="button" className={styles.slim} onClick={() => setAt({ ...at, isAsking: false })}>
          Say it later
        </button>
        <button type="button" className={styles.slim} onClick={() => noteInstead(asked, 'good')}>
          No, it is good
        </button>
      </div>
    </section>
  );
}
