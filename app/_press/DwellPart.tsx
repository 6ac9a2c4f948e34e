'use client';

import { classes } from '@/app/_controls/classes';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { countDown, inPressWords, nextWords, placeWords } from '@/app/_words/press/pressWords';
import { recipeAtPress } from '@/app/_words/press/recipeAtPress';
import { putIn, sizesAhead } from '@/lib/pressing/atPress';
import { pressMoment } from '@/lib/pressing/pressPhase';
import styles from './Dwell.module.css';
import { HeatColumn } from './HeatColumn';
import { PhaseKeys } from './PhaseKeys';
import type { AtThePress } from './usePressing';

type DwellPartProps = Readonly<{ pressing: AtThePress; now: number; isSmall: boolean }>;

/** What is in the press, how long still, and what comes next. */
export function DwellPart({ pressing, now, isSmall }: DwellPartProps) {
  const { turn, at, setAt, stopped } = pressing;
  const formatter = formatterFor(useTextContext());
  const { recipe } = turn.placement;
  const { inPress } = at;
  const moment = inPress === null ? null : pressMoment(inPress, recipe, now);
  const ahead = sizesAhead(turn, at);
  const shown = inPress?.size ?? ahead[0] ?? null;
  const counts = turn.counts.find(({ size }) => size === shown);
  const waiting = at.lifted.filter((size) => size === shown).length;
  const place = counts === undefined ? 0 : counts.needed - counts.toGo + waiting + 1;
  const start = (phase: 'heat' | 'press') => setAt(putIn(at, turn, phase, Date.now()));
  return (
    <section className={classes(styles.dwell, isSmall && styles.small)} aria-label="In the press">
      <div className={styles.heat}>
        <HeatColumn share={moment?.share ?? 0} />
        {!isSmall && moment !== null && !moment.isOver && (
          <span className={styles.in}>{moment.secondsIn} s in</span>
        )}
      </div>
      <div className={styles.now}>
        <p className={styles.what}>
          <span className={classes(styles.letter, (shown?.length ?? 0) > 3 && styles.long)}>
            {shown ?? '–'}
          </span>
          <span>
            {moment === null ? (shown === null ? 'all pressed' : 'is next') : inPressWords(moment)}
            {counts !== undefined && counts.toGo > 0 && <strong>{placeWords(place, counts.needed)}</strong>}
          </span>
        </p>
        <p className={styles.clock} role="timer" aria-label="Time left">
          {moment === null
            ? countDown(recipe.dwellSeconds)
            : moment.phase === 'lift'
              ? 'Lift'
              : countDown(moment.secondsLeft)}
        </p>
        {!isSmall && (
          <>
            <p className={styles.recipe}>{recipeAtPress(recipe, formatter)}</p>
            <PhaseKeys {...{ recipe, moment }} isStopped={stopped !== null} onStart={start} />
          </>
        )}
        <p className={styles.next}>{nextWords(inPress === null ? ahead.slice(1) : ahead, shown)}</p>
      </div>
    </section>
  );
}
