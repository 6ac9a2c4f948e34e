'use client';

import { useState } from 'react';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import { madeAgainQuestion } from '@/app/_words/orders/orderNoteWords';
import { causeWords, payerWords, usualPayer } from '@/app/_words/orders/orderStepWords';
import { jobFacts } from '@/lib/drafts/jobFacts';
import { placeOf } from '@/lib/orders/stepOrder';
import { numberLimits, textLimits } from '@/shared/limits';
import { orderEventSchema } from '@/shared/schemas/orderEvents';
import { choicesOf } from './choicesOf';
import { NoteFrame } from './NoteFrame';
import type { StepNoteProps } from './stepNote';
import { useNoting } from './useNoting';

/** Something is made again: how many, why, and who pays. */
export function ReprintNote({ on, onDone, onLeave }: StepNoteProps) {
  const [cause, setCause] = useState<keyof typeof causeWords>('ourFault');
  const [chosenPayer, setPayer] = useState<keyof typeof payerWords | null>(null);
  const [pieces, setPieces] = useState<number | null>(null);
  const [note, setNote] = useState('');
  const { problem, noteSteps } = useNoting(on);
  const ordered = on.jobs.reduce((sum, { job }) => sum + jobFacts(job).pieces, 0);
  const isPressed = on.standing.steps.some(
    ({ step, holdsSince }) => holdsSince !== null && placeOf(step.what) >= placeOf('pressed'),
  );
  const question = pieces === null ? null : madeAgainQuestion(pieces, ordered, isPressed, on.formatter);
  const payer = chosenPayer ?? usualPayer[cause];
  return (
    <NoteFrame
      name="Made again"
      missing={pieces === null ? 'How many pieces comes first.' : undefined}
      isAsked={question !== null}
      {...{ on, problem, onLeave }}
      onEnter={(day) => {
        if (pieces === null) return;
        if (noteSteps(day, [{ what: 'reprint', cause, payer, pieces, note: note.trim() }])) onDone();
      }}
    >
      <FieldGroup>
        <NumberField
          label="Pieces"
          width="narrow"
          value={pieces}
          {...numberLimits(orderEventSchema, ['step', 'pieces'])}
          caution={question ?? undefined}
          onCommit={setPieces}
        />
        <ChoiceField label="Why" value={cause} choices={choicesOf(causeWords)} onCommit={setCause} />
        <ChoiceField
          label="Who pays"
          value={payer}
          choices={choicesOf(payerWords)}
          hint={payer === 'customer' ? 'Note a change of the order with what it costs.' : undefined}
          onCommit={setPayer}
        />
      </FieldGroup>
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
