'use client';

import { wallAt } from '@/app/_clock/wallAt';
import { Button } from '@/app/_controls/Button';
import { clockWords } from '@/app/_words/clockWords';
import { turnName } from '@/app/_words/press/doneWords';
import {
  pressDoneWords,
  pressKeepingWords,
  pressKeptWords,
  pressNotKeptWords,
} from '@/app/_words/press/pressWords';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import styles from './Head.module.css';
import type { AtThePress } from './usePressing';

type PressHeadProps = Readonly<{ pressing: AtThePress; now: number; locale: string }>;

/** Which print of which run, when it will be done, and whether all is kept. */
export function PressHead({ pressing, now, locale }: PressHeadProps) {
  const { workspace, standard, run, turn } = pressing;
  const { kept } = workspace;
  const done = clockWords(wallAt(now + turn.minutesToGo * 60_000).minute, locale);
  return (
    <div className={styles.head}>
      <h1 className={styles.title}>
        {standard.body.title}: {turnName(turn, run.turns)}
      </h1>
      <p className={styles.done}>{pressDoneWords(run.current === null, turn.isThrough ? null : done)}</p>
      {kept.state === 'notKept' ? (
        <div className={styles.alarm} role="alert">
          <p>
            <strong>Not kept.</strong> {pressNotKeptWords} {saveFailureWords[kept.why]}
          </p>
          <Button kind="strong" onPress={() => void workspace.retry()}>
            Try again
          </Button>
        </div>
      ) : (
        <p className={styles.kept}>
          {kept.state === 'keeping'
            ? pressKeepingWords
            : pressKeptWords(clockWords(wallAt(kept.at).minute, locale))}
        </p>
      )}
    </div>
  );
}
