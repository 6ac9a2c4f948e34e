'use client';

import { Button } from '@/app/_controls/Button';
import styles from './Carry.module.css';
import { CarryTold } from './CarryTold';
import { type Carried, type CarryStore, useCarrying } from './useCarrying';

type CarryProps = Readonly<{
  store: CarryStore;
  what: Carried;
  /** True where several stand under each other, so that the button says which. */
  isOneOfMany?: boolean;
  /** What the button says. */
  words?: string;
}>;

/** The button that makes a file of one thing with all that hangs on it, and what became of that. */
export function Carry({ store, what, isOneOfMany = false, words = 'Carry to another device' }: CarryProps) {
  const from = useCarrying(store);
  return (
    <div className={styles.carry}>
      <Button
        kind={isOneOfMany ? 'quiet' : 'plain'}
        spoken={isOneOfMany ? `${words}: ${what.name}` : undefined}
        blockedBy={from.carrying.kind === 'making' ? 'The file is being made.' : undefined}
        onPress={() => from.carry(what)}
      >
        {words}
      </Button>
      <CarryTold from={from} />
    </div>
  );
}
