'use client';

import { Button } from '@/app/_controls/Button';
import { changesStand } from '@/app/_docket/common/changesStand';
import { useJob } from '@/app/_docket/common/useJob';
import type { Change } from '@/shared/finding';
import styles from './LeverSection.module.css';

/** A change that was tried, with the way back. */
export interface Tried {
  readonly says: string;
  readonly changes: readonly Change[];
  readonly back: readonly Change[];
}

type TriedListProps = Readonly<{
  tried: readonly Tried[];
  onTakeBack: (one: Tried) => void;
  onLeave: (one: Tried) => void;
}>;

/** What was tried here, each to be taken back while it stands. */
export function TriedList({ tried, onTakeBack, onLeave }: TriedListProps) {
  const { input } = useJob();
  if (tried.length === 0) return null;
  return (
    <ul className={styles.list} aria-label="Tried">
      {tried.map((one) => (
        <li className={styles.tried} key={one.says}>
          <p>
            <strong>Tried.</strong> {one.says}
            {!changesStand(one.changes, input) && (
              <span className={styles.gain}>
                You have changed it since, so there is nothing to take back.
              </span>
            )}
          </p>
          {changesStand(one.changes, input) ? (
            <Button onPress={() => onTakeBack(one)}>Take it back</Button>
          ) : (
            <Button kind="quiet" onPress={() => onLeave(one)}>
              Leave it
            </Button>
          )}
        </li>
      ))}
    </ul>
  );
}
