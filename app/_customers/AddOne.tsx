'use client';

import type { ReactNode } from 'react';
import { Button } from '@/app/_controls/Button';
import { EntryForm } from '@/app/_fields/EntryForm';
import styles from './Customers.module.css';

type AddOneProps = Readonly<{
  /** On the button that begins one, and what the form is called. */
  words: Readonly<{ begin: string; form: string; add: string }>;
  /** The most there can be, where there are so many. */
  most: number | null;
  isAdding: boolean;
  missing: string | undefined;
  onBegin: () => void;
  onAdd: () => void;
  onLeave: () => void;
  children: ReactNode;
}>;

/** Writes a further one down before it is kept, so that no empty one is. */
export function AddOne(props: AddOneProps) {
  const { words, most, isAdding, missing, onBegin, onAdd, onLeave, children } = props;
  if (!isAdding)
    return (
      <div>
        <Button blockedBy={most === null ? undefined : `${most} is the most there can be.`} onPress={onBegin}>
          {words.begin}
        </Button>
      </div>
    );
  return (
    <EntryForm label={words.form} className={styles.row} missing={missing} onEnter={onAdd}>
      {children}
      <div className={styles.ends}>
        <Button type="submit" blockedBy={missing}>
          {words.add}
        </Button>
        <Button kind="quiet" onPress={onLeave}>
          Leave it
        </Button>
      </div>
    </EntryForm>
  );
}
