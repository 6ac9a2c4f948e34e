'use client';

import { classes } from '@/app/_controls/classes';
import { pressPhaseWords } from '@/app/_words/press/pressWords';
import type { PressMoment } from '@/lib/pressing/pressPhase';
import type { Recipe } from '@/shared/schemas/job';
import styles from './Dwell.module.css';

type PhaseKeysProps = Readonly<{
  recipe: Recipe;
  moment: PressMoment | null;
  isStopped: boolean;
  onStart: (phase: 'heat' | 'press') => void;
}>;

/** The way of a piece; a tap on heat or press begins it there for the next one, or goes on with the one that is hot. */
export function PhaseKeys({ recipe, moment, isStopped, onStart }: PhaseKeysProps) {
  const { preheatSeconds, dwellSeconds, steps } = recipe;
  const heats = preheatSeconds !== null && preheatSeconds > 0;
  const current = moment?.phase ?? null;
  // While one is pressed or cools, the next cannot lie there.
  const isHeld = isStopped || current === 'press' || current === 'cool';
  const key = (phase: 'heat' | 'press', seconds: number, isNext: boolean) => (
    <button
      type="button"
      className={classes(
        styles.phase,
        styles.key,
        current === phase && styles.current,
        isNext && styles.begin,
      )}
      aria-disabled={isHeld || undefined}
      onClick={() => !isHeld && onStart(phase)}
    >
      <span>
        {isNext && <span className="visuallyHidden">Start: </span>}
        {pressPhaseWords[phase]}
      </span>
      <span>{seconds} s</span>
    </button>
  );
  const isIdle = current === null || current === 'lift';
  return (
    <div className={styles.phases}>
      {heats && key('heat', preheatSeconds, isIdle && !isStopped)}
      {key('press', dwellSeconds, !isStopped && ((isIdle && !heats) || current === 'heat'))}
      <span className={classes(styles.phase, current === 'cool' && styles.current)}>
        <span>{pressPhaseWords.cool}</span>
        <span>{steps.coolSeconds ?? 0} s</span>
      </span>
      <span className={classes(styles.phase, current === 'lift' && styles.current)}>
        <span>{pressPhaseWords.lift}</span>
        <span>straight</span>
      </span>
    </div>
  );
}
