'use client';

import { useState } from 'react';
import { Button } from './Button';
import styles from './RemoveButton.module.css';

type RemoveButtonProps = Readonly<{
  /** What would go, as the maker calls it. */
  what: string;
  /** Names of the jobs that stand on it. */
  usedBy: readonly string[];
  onRemove: () => void;
}>;

/** Takes something away; asks first only where jobs stand on it, because undo brings it back. */
export function RemoveButton({ what, usedBy, onRemove }: RemoveButtonProps) {
  const [isAsking, setAsking] = useState(false);
  const [first, ...others] = usedBy;
  if (first === undefined || !isAsking)
    return (
      <Button kind="quiet" onPress={() => (first === undefined ? onRemove() : setAsking(true))}>
        Remove {what}
      </Button>
    );
  return (
    <div className={styles.asking} role="alert">
      <p>
        {first}
        {others.length > 0 && ` and ${others.length} more ${others.length === 1 ? 'job' : 'jobs'}`}{' '}
        {others.length > 0 ? 'use' : 'uses'} {what}. Without it no price can be made there until another is
        chosen.
      </p>
      <Button onPress={onRemove}>Remove it all the same</Button>
      <Button kind="quiet" onPress={() => setAsking(false)}>
        Leave it
      </Button>
    </div>
  );
}
