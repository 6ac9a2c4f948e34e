'use client';

import { useState } from 'react';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { reminderWords } from '@/app/_words/orders/orderStepWords';
import { choicesOf } from './choicesOf';
import { NoteFrame } from './NoteFrame';
import type { StepNoteProps } from './stepNote';
import { useNoting } from './useNoting';

/** The customer was asked again: for what. */
export function RemindedNote({ on, onDone, onLeave }: StepNoteProps) {
  const waits = on.turn.waits.flatMap(({ why }) => reminders[why] ?? []);
  const [of, setOf] = useState<keyof typeof reminderWords>(waits[0] ?? 'answer');
  const { problem, noteSteps } = useNoting(on);
  return (
    <NoteFrame
      name="Reminded"
      {...{ on, problem, onLeave }}
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
