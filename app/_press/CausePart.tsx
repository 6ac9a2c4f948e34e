'use client';

import { useEffect, useMemo, useRef, useState } from 'react';
import { classes } from '@/app/_controls/classes';
import { faultNames, moveWords } from '@/app/_words/press/faultWords';
import { otherCause, twiceHead, twiceThen } from '@/app/_words/press/pressWords';
import { causeTiles } from '@/lib/pressing/causeTiles';
import { likelyFaults } from '@/lib/pressing/likelyFaults';
import { pressedByRecipe } from '@/lib/pressing/pressedByRecipe';
import type { PressedEntry } from '@/lib/pressing/pressedEntry';
import { nextMove } from '@/lib/pressing/testTrail';
import type { PressFault } from '@/shared/tables/faults';
import type { AtThePress } from './usePressing';
import styles from './Verdict.module.css';

type CausePartProps = Readonly<{ pressing: AtThePress; asked: PressedEntry }>;

/** Tiles that fit above the fold of a phone. */
const TILES = 6;

/** What is wrong with it, by one tap, the rare causes behind one more; the one that would make it twice running says so before it is tapped. */
export function CausePart({ pressing, asked }: CausePartProps) {
  const { turn, at, setAt, nameFault, noteInstead } = pressing;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const before = turn.pressed.at(turn.pressed.findIndex(({ id }) => id === asked.id) - 1);
  const running = turn.pressed.length > 1 ? (before?.body.fault ?? null) : null;
  const move = running === null ? null : nextMove(running);
  const isFirst = turn.slot === 0 && asked.body.result === 'scrap';
  const { open, rare } = causeTiles(useLikely(pressing), isFirst ? TILES - 1 : TILES, running);
  const [isRare, setRare] = useState(false);
  const firstRare = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (isRare) firstRare.current?.focus();
  }, [isRare]);
  const tile = (fault: PressFault) => (
    <button
      key={fault}
      ref={fault === rare[0] ? firstRare : undefined}
      type="button"
      className={classes(styles.tile, fault === running && styles.running)}
      onClick={() => nameFault(asked, fault)}
    >
      {faultNames[fault]}
    </button>
  );
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
        {open.map(tile)}
        {isFirst && (
          <button type="button" className={styles.tile} onClick={() => noteInstead(asked, 'blankFault')}>
            Blank fault
            <span className={styles.under}>found before it was pressed</span>
          </button>
        )}
        {isRare && rare.map(tile)}
      </div>
      {!isRare && (
        <button type="button" className={styles.slim} onClick={() => setRare(true)}>
          {otherCause}
        </button>
      )}
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

// Helpers

/** What went wrong with this recipe on this blank in this press in any run comes first, then what is common. */
function useLikely({ workspace, turn }: AtThePress): readonly PressFault[] {
  const { entries, papers } = workspace;
  const { blankId, placement } = turn;
  return useMemo(() => {
    const use = { blankId, pressId: placement.pressId, recipe: placement.recipe };
    return likelyFaults(pressedByRecipe(use, entries.pressing, papers.runStandard));
  }, [blankId, placement, entries.pressing, papers.runStandard]);
}
