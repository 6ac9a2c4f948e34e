'use client';

import { useState } from 'react';
import { TextField } from '@/app/_fields/TextField';
import { revisionWords } from '@/app/_words/orders/orderNoteWords';
import { textLimits } from '@/shared/limits';
import { orderEventSchema } from '@/shared/schemas/orderEvents';
import { NoteFrame } from './NoteFrame';
import styles from './Notes.module.css';
import type { StepNoteProps } from './stepNote';
import { useNoting } from './useNoting';

/** The customer wants the proof otherwise: one round of those included. */
export function RevisedNote({ on, onDone, onLeave }: StepNoteProps) {
  const { used, included } = on.standing.revisions;
  const [wish, setWish] = useState('');
  const { problem, noteSteps } = useNoting(on);
  return (
    <NoteFrame
      name="Another proof wished"
      missing={wish.trim() === '' ? 'What they want comes first.' : undefined}
      {...{ on, problem, onLeave }}
      onEnter={(day) => {
        if (noteSteps(day, [{ what: 'revised', wish: wish.trim() }])) onDone();
      }}
    >
      <TextField
        label="What they want otherwise"
        value={wish}
        rows={2}
        width="full"
        {...textLimits(orderEventSchema, ['step', 'wish'])}
        onCommit={setWish}
      />
      <p className={used >= included ? styles.caution : styles.told}>
        {revisionWords(used, included, on.formatter)}
      </p>
    </NoteFrame>
  );
}
