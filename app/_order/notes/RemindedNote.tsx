'use client';

import { ChoiceField } from '@/app/_fields/ChoiceField';
import { useTypedChoice } from '@/app/_fields/useTyped';
import { reminderWords } from '@/app/_words/orders/notes/orderStepWords';
import { choicesOf } from './choicesOf';
import { NoteFrame } from './NoteFrame';
import type { StepNoteProps } from './stepNote';
import { useNoting } from './useNoting';

/** The customer was asked again: for what. */
export function RemindedNote({ on, form, onDone, onLeave }: StepNoteProps) {
  const waits = on.turn.waits.flatMap(({ why }) => reminders[why] ?? []);
  const [of, setOf] = useTypedChoice(form, 'of', reminderWords, waits[0] ?? 'answer');
  const { problem, noteSteps } = useNoting(on, form);
  return (
    <NoteFrame
      name="Reminded"
      {...{ on, form, problem, onLeave }}
      onEnter={(day) => {
        if (noteSteps(day, [{ what: 'reminded', of }])) onDone();
      }}
    >
      <ChoiceField label="Of what" value={of} choices={choicesOf(reminderWords)} onCommit={setOf} />
    </NoteFrame>
  );
}

/** What somebody who waits for this is reminded of. */
const reminders: Readonly<Record<string, keyof typeof reminderWords>> = {
  decision: 'answer',
  approval: 'approval',
  deposit: 'deposit',
  balance: 'balance',
  remind: 'balance',
};
