'use client';

import { type ReactNode, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import styles from './TryAgain.module.css';

type TryAgainProps = Readonly<{
  /** What is missing, why, and what becomes of it. */
  children: ReactNode;
  /** A new one with every failure. */
  failure: object;
  /** Null where the same would come of it. */
  onAgain: (() => void) | null;
}>;

/** Says aloud that something is missing, with a button that tries again; it stays until the thing is there. */
export function TryAgain({ children, failure, onAgain }: TryAgainProps) {
  const [tried, setTried] = useState<object | null>(null);
  const isTrying = tried === failure;
  return (
    <div className={styles.missing} role="alert">
      <p>{isTrying ? 'Trying again …' : children}</p>
      {onAgain !== null && (
        <Button
          onPress={() => {
            setTried(failure);
            onAgain();
          }}
        >
          Try again
        </Button>
      )}
    </div>
  );
}
