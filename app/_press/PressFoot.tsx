'use client';

import { useToday } from '@/app/_clock/useToday';
import { tappedWords } from '@/app/_words/press/pressWords';
import styles from './Spares.module.css';
import type { AtThePress } from './usePressing';

/** What can be opened over the press. */
export type PressPanel = 'more' | 'test' | 'causes';

type PressFootProps = Readonly<{ pressing: AtThePress; onOpen: (panel: PressPanel) => void }>;

/** The way back, the way out, and what is tapped less often. */
export function PressFoot({ pressing, onOpen }: PressFootProps) {
  const { last, stopped, undo, step } = pressing;
  const today = useToday();
  return (
    <div className={styles.foot}>
      <button type="button" className={styles.key} onClick={() => onOpen('more')}>
        More
      </button>
      <button type="button" className={styles.key} aria-disabled={last === null || undefined} onClick={undo}>
        Undo
        <span className={styles.small}>
          {last === null
            ? 'nothing yet'
            : last.kind === 'pressing'
              ? tappedWords(last.body)
              : `${last.body.size}, faulty blank`}
        </span>
      </button>
      <button
        type="button"
        className={styles.key}
        aria-disabled={stopped !== null || undefined}
        onClick={() =>
          stopped === null && step('Stop the press', { what: 'stopped', fault: null, note: '' }, today)
        }
      >
        Stop
      </button>
    </div>
  );
}
