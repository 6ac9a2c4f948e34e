'use client';

import { type ReactNode, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import styles from './WipedWorkshop.module.css';

type WipedWorkshopProps = Readonly<{
  onBeginAgain: () => Promise<void>;
  /** Where a copy is brought back. */
  children: ReactNode;
}>;

/** In place of every screen once the browser has cleared what was kept: nobody takes the example for what is left. */
export function WipedWorkshop({ onBeginAgain, children }: WipedWorkshopProps) {
  const [isBusy, setBusy] = useState(false);
  const begin = async () => {
    setBusy(true);
    await onBeginAgain();
    setBusy(false);
  };
  return (
    <div className={styles.wiped}>
      <h1>What was kept here is gone</h1>
      <p>
        The browser cleared it, most likely when space ran out or site data was deleted. Bring your copy back,
        or begin again.
      </p>
      {children}
      <div className={styles.again}>
        <p>There is no copy? A copy can still be brought in later, beside what you begin with.</p>
        <Button
          blockedBy={isBusy ? 'The example is being put here.' : undefined}
          onPress={() => void begin()}
        >
          Begin again with the example
        </Button>
      </div>
    </div>
  );
}
