'use client';

import { TextField } from '@/app/_fields/TextField';
import { useTypedText } from '@/app/_fields/useTyped';
import { revisionWords } from '@/app/_words/orders/notes/orderNoteWords';
import { textLimits } from '@/shared/limits';
import { orderEventSchema } from '@/shared/schemas/orderEvents';
import { NoteFrame } from './NoteFrame';
import styles from './Notes.module.css';
import type { StepNoteProps } from './stepNote';
import { useNoting } from './useNoting';

/** The customer wants the proof otherwise: one round of those included. */
export function RevisedNote({ on, form, onDone, onLeave }: StepNoteProps) {
  const { used, included } = on.standing.revisions;
  const wish = useTypedText(form, 'wish');
  const { problem, noteSteps } = useNoting(on, form);
  return (
    <NoteFrame
      name="Another proof wished"
      missing={wish.value.trim() === '' ? 'What they want comes first.' : undefined}
      {...{ on, form, problem, onLeave }}
      onEnter={(day) => {
        if (noteSteps(day, [{ what: 'revised', wish: wish.value.trim() }])) onDone();
      }}
    >
      <TextField
        label="What they want otherwise"
        {...wish}
        rows={2}
        width="full"
        {...textLimits(orderEventSchema, ['step', 'wish'])}
      />
      <p className={used >= included ? styles.caution : styles.told}>
        {revisionWords(used, included, on.formatter)}
      </p>
    </NoteFrame>
  );
}
