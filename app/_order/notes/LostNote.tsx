'use client';

import { ChoiceField } from '@/app/_fields/ChoiceField';
import { TextField } from '@/app/_fields/TextField';
import { useTypedChoice, useTypedText } from '@/app/_fields/useTyped';
import { lossWords } from '@/app/_words/orders/notes/orderStepWords';
import { textLimits } from '@/shared/limits';
import { orderEventSchema } from '@/shared/schemas/orderEvents';
import { choicesOf } from './choicesOf';
import { NoteFrame } from './NoteFrame';
import type { StepNoteProps } from './stepNote';
import { useNoting } from './useNoting';

/** They went elsewhere, or it came to nothing: why. */
export function LostNote({ on, form, onDone, onLeave }: StepNoteProps) {
  const [why, setWhy] = useTypedChoice(form, 'why', lossWords, null);
  const text = useTypedText(form, 'note');
  const { problem, noteSteps } = useNoting(on, form);
  return (
    <NoteFrame
      name="Lost"
      missing={why === null ? 'Why comes first: it tells how often which price is taken.' : undefined}
      {...{ on, form, problem, onLeave }}
      onEnter={(day) => {
        if (why !== null && noteSteps(day, [{ what: 'lost', why, note: text.value.trim() }])) onDone();
      }}
    >
      <ChoiceField label="Why" value={why} choices={choicesOf(lossWords)} onCommit={setWhy} />
      <TextField
        label="Note"
        width="full"
        {...text}
        {...textLimits(orderEventSchema, ['step', 'note'])}
        hint="May stay empty."
      />
    </NoteFrame>
  );
}
