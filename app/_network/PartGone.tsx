'use client';

import type { ReactNode } from 'react';
import { Button } from '@/app/_controls/Button';
import { reopening } from './reopening';
import styles from './TryAgain.module.css';

type PartGoneProps = Readonly<{
  /** What is missing since the server has a newer version. */
  children: ReactNode;
}>;

/** Stands where a part of the page is gone from the server. The page opened anew is offered once for each version. */
export function PartGone({ children }: PartGoneProps) {
  const wasTried = reopening.wasTried();
  return (
    <div className={styles.missing} role="alert">
      <p>
        {children}{' '}
        {wasTried
          ? 'Opening the page anew did not help. What you typed is kept; try again later.'
          : 'Open the page anew to get it; what you typed is kept.'}
      </p>
      {!wasTried && <Button onPress={reopening.now}>Open it anew</Button>}
    </div>
  );
}
