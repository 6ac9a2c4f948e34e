'use client';

import Link from 'next/link';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import type { WakeState } from '@/app/_tab/useWakeLock';
import { doneWords, turnName } from '@/app/_words/press/doneWords';
import { pressWakeWords } from '@/app/_words/press/pressWords';
import { recipeMore } from '@/app/_words/press/recipeAtPress';
import { isLeft } from '@/lib/pressing/atPress';
import type { PressPanel } from '../PressFoot';
import type { AtThePress } from '../usePressing';
import { FirstOffPart } from './FirstOffPart';
import { HeatedPart } from './HeatedPart';
import styles from './Panel.module.css';

type MorePanelProps = Readonly<{
  pressing: AtThePress;
  wake: WakeState;
  onDone: () => void;
  onOpen: (panel: PressPanel) => void;
}>;

/** What is tapped less often. */
export function MorePanel({ pressing, wake, onDone, onOpen }: MorePanelProps) {
  const { run, turn, at, setAt, goTo, judged, runId, blankFaulty } = pressing;
  return (
    <div className={styles.panel}>
      {run.turns.length > 1 && (
        <fieldset>
          <legend>Which print</legend>
          <div className={styles.keys}>
            {run.turns.map((one) => (
              <button
                key={one.key}
                type="button"
                className={styles.choice}
                aria-pressed={one.key === turn.key}
                onClick={() => {
                  goTo(one);
                  onDone();
                }}
              >
                {turnName(one, run.turns)}: {one.toGo === 0 ? 'done' : `${one.toGo} to go`}
              </button>
            ))}
          </div>
        </fieldset>
      )}
      {isLeft(turn, at) && (
        <fieldset>
          <legend>{doneWords.further}</legend>
          <div className={styles.keys}>
            {turn.counts.map(({ size }) => (
              <button
                key={size}
                type="button"
                className={styles.choice}
                aria-label={doneWords.furtherOf(size)}
                onClick={() => {
                  setAt({ ...at, size, isFurther: true });
                  onDone();
                }}
              >
                {size}
              </button>
            ))}
          </div>
        </fieldset>
      )}
      <ul className={styles.list}>
        {recipeMore(turn.placement.recipe).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <div className={styles.keys}>
        {judged !== null && (
          <Button
            onPress={() => {
              blankFaulty(judged);
              onDone();
            }}
          >
            A blank {judged} was faulty before it was pressed
          </Button>
        )}
        <Button onPress={() => onOpen('test')}>Note a test press</Button>
      </div>
      <Fold summary="The press was heated up" line="platen and room measured">
        <HeatedPart {...{ pressing, onDone }} />
      </Fold>
      <Fold summary="First off" line="looked at and signed">
        <FirstOffPart {...{ pressing, onDone }} />
      </Fold>
      {pressWakeWords[wake] !== '' && <p>{pressWakeWords[wake]}</p>}
      <p>
        <Link href="/making/log">Press log</Link> ·{' '}
        <Link href={`/making/${encodeURIComponent(runId)}`}>Leave the press</Link>
      </p>
    </div>
  );
}
