'use client';

import { useState } from 'react';
import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import styles from './Customers.module.css';

type AskedRemoveProps = Readonly<{
  what: string;
  /** What would be missing elsewhere; null where nothing would, and then nothing is asked: undo brings it back. */
  told: string | null;
  onRemove: () => void;
}>;

/** Takes away what orders may stand on; says so first where they do. */
export function AskedRemove({ what, told, onRemove }: AskedRemoveProps) {
  const [isAsking, setAsking] = useState(false);
  if (told === null || !isAsking)
    return (
      <Button
        kind="quiet"
        spoken={`Remove ${what}`}
        onPress={() => (told === null ? onRemove() : setAsking(true))}
      >
        Remove
      </Button>
    );
  return (
    <div className={styles.asking} role="alert">
      <Advice severity="caution">{told}</Advice>
      <div className={styles.ends}>
        <Button spoken={`Remove ${what} all the same`} onPress={onRemove}>
          Remove all the same
        </Button>
        <Button kind="quiet" onPress={() => setAsking(false)}>
          Leave it
        </Button>
      </div>
    </div>
  );
}
