'use client';

import { useTextContext } from '@/app/_fields/useTextContext';
import { LaterPart } from '@/app/_network/LaterPart';
import { formatterFor } from '@/app/_words/formatter';
import { doneWords, turnCounts, turnDone, turnName } from '@/app/_words/press/doneWords';
import { recipeAtPress } from '@/app/_words/press/recipeAtPress';
import { recipeKey } from '@/lib/pressing/recipeKey';
import styles from './Done.module.css';
import { laterParts } from './laterParts';
import type { AtThePress } from './usePressing';

/** A print of which nothing is left to press: what it came to, and on with the next; after the last one, all of it. */
export function DonePart({ pressing }: Readonly<{ pressing: AtThePress }>) {
  const { run, turn, goTo } = pressing;
  const formatter = formatterFor(useTextContext());
  const next = run.current;
  if (next === null)
    return <LaterPart part={laterParts.finished} what="What was pressed" props={{ pressing }} />;
  const setUpOf = ({ blankId, placement }: typeof turn) => ({
    ...{ blankId, pressId: placement.pressId, recipe: placement.recipe },
  });
  const isSame = recipeKey(setUpOf({ ...next, blankId: turn.blankId })) === recipeKey(setUpOf(turn));
  return (
    <section className={styles.part} aria-labelledby="print-done">
      <h2 className={styles.heading} id="print-done">
        {turnDone(turn, run.turns)}
      </h2>
      <p className={styles.counts}>{turnCounts(turn, formatter)}</p>
      <button type="button" className={styles.next} onClick={() => goTo(next)}>
        <span className={styles.word}>{doneWords.goOn(turnName(next, run.turns))}</span>
        <span>{formatter.count(next.toGo, 'piece')}</span>
      </button>
      <p>{isSame ? doneWords.same : doneWords.set(recipeAtPress(next.placement.recipe, formatter))}</p>
    </section>
  );
}
