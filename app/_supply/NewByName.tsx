'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { EntryForm } from '@/app/_fields/EntryForm';
import { TextField } from '@/app/_fields/TextField';
import type { TextLimits } from '@/shared/limits';
import { NotTaken } from './NotTaken';
import styles from './Supply.module.css';
import { type Outcome, useTaken } from './useTaken';

type NewByNameProps = Readonly<{
  label: string;
  limits: TextLimits;
  taken: readonly string[];
  takenWords: (name: string) => string;
  onAdd: (name: string) => Outcome;
}>;

/** Something new that begins with its name, which is nobody else's. */
export function NewByName({ label, limits, taken, takenWords, onAdd }: NewByNameProps) {
  const [name, setName] = useState('');
  const adding = useTaken();
  const typed = name.trim();
  const isTaken = taken.some((one) => one.toLowerCase() === typed.toLowerCase());
  const missing = typed === '' ? 'The name is missing.' : isTaken ? takenWords(typed) : undefined;
  return (
    <EntryForm
      label={label}
      className={styles.adding}
      missing={missing}
      onEnter={() => {
        if (adding.taken(onAdd(typed))) setName('');
      }}
    >
      <TextField
        label={label}
        value={name}
        {...limits}
        caution={isTaken ? missing : undefined}
        onCommit={setName}
      />
      <Button type="submit" blockedBy={missing}>
        Add it
      </Button>
      <NotTaken problem={adding.problem} />
    </EntryForm>
  );
}
