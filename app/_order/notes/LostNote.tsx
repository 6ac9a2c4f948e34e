'use client';

import { useState } from 'react';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { TextField } from '@/app/_fields/TextField';
import { lossWords } from '@/app/_words/orders/orderStepWords';
import { textLimits } from '@/shared/limits';
import { type LossReason, orderEventSchema } from '@/shared/schemas/orderEvents';
import { choicesOf } from './choicesOf';
import { NoteFrame } from './NoteFrame';
import type { StepNoteProps } from './stepNote';
import { useNoting } from './useNoting';

/** They went elsewhere, or it came to nothing: why. */
export function LostNote({ on, onDone, onLeave }: StepNoteProps) {
  const [why, setWhy] = useState<LossReason | null>(null);
  const [note, setNote] = useState('');
  const { problem, noteSteps } = useNoting(on);
  return (
    <NoteFrame
      name="Lost"
      missing={why === null ? 'Why comes first: it tells how often which price is taken.' : undefined}
      {...{ on, problem, onLeave }}
      onEnter={(day) => {
        if (why !== null && noteSteps(day, [{ what: 'lost', why, note: note.trim() }])) onDone();
      }}
    >
      <ChoiceField label="Why" value={why} choices={choicesOf(lossWords)} onCommit={setWhy} />
      <TextField
        label="Note"
        width="full"
        value={note}
        {...textLimits(orderEventSchema, ['step', 'note'])}
        hint="May stay empty."
        onCommit={setNote}
      />
    </NoteFrame>
  );
}
