'use client';

import { wallAt } from '@/app/_clock/wallAt';
import { Button } from '@/app/_controls/Button';
import { clockWords } from '@/app/_words/clockWords';
import { pressKeepingWords, pressKeptWords, pressNotKeptWords } from '@/app/_words/press/pressWords';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import styles from './Head.module.css';
import type { AtThePress } from './usePressing';

type PressHeadProps = Readonly<{ pressing: AtThePress; now: number; locale: string }>;

/** Which print of which run, when it will be done, and whether all is kept. */
export function PressHead({ pressing, now, locale }: PressHeadProps) {
  const { workspace, standard, run, turn } = pressing;
  const { kept } = workspace;
  const lines = new Set(run.turns.map(({ jobId, lineId }) => `${jobId} ${lineId}`));
  const done = clockWords(wallAt(now + turn.minutesToGo * 60_000).minute, locale);
  return (
    <div className={styles.head}>
      <h1 className={styles.title}>
        {standard.body.title}, {turn.placement.name.toLowerCase()}
        {lines.size > 1 && ` of ${turn.lineName}`}
      </h1>
      <p className={styles.done}>{turn.toGo === 0 ? 'this print is done' : `done about ${done}`}</p>
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
