'use client';

import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import { useTypedChoice, useTypedNumber, useTypedText } from '@/app/_fields/useTyped';
import { madeAgainQuestion } from '@/app/_words/orders/notes/orderNoteWords';
import { causeWords, payerWords, usualPayer } from '@/app/_words/orders/notes/orderStepWords';
import { jobFacts } from '@/lib/drafts/jobFacts';
import { placeOf } from '@/lib/orders/stepOrder';
import { numberLimits, textLimits } from '@/shared/limits';
import { orderEventSchema } from '@/shared/schemas/orderEvents';
import { choicesOf } from './choicesOf';
import { NoteFrame } from './NoteFrame';
import type { StepNoteProps } from './stepNote';
import { useNoting } from './useNoting';

/** Something is made again: how many, why, and who pays. */
export function ReprintNote({ on, form, onDone, onLeave }: StepNoteProps) {
  const [cause, setCause] = useTypedChoice(form, 'cause', causeWords, 'ourFault');
  const [chosenPayer, setPayer] = useTypedChoice(form, 'payer', payerWords, null);
  const typed = useTypedNumber(form, 'pieces');
  const pieces = typed.value;
  const text = useTypedText(form, 'note');
  const { problem, noteSteps } = useNoting(on, form);
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
      {...{ on, form, problem, onLeave }}
      onEnter={(day) => {
        if (pieces === null) return;
        if (noteSteps(day, [{ what: 'reprint', cause, payer, pieces, note: text.value.trim() }])) onDone();
      }}
    >
      <FieldGroup>
        <NumberField
          label="Pieces"
          width="narrow"
          {...typed}
          {...numberLimits(orderEventSchema, ['step', 'pieces'])}
          caution={question ?? undefined}
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
        {...text}
        {...textLimits(orderEventSchema, ['step', 'note'])}
        hint="May stay empty."
      />
    </NoteFrame>
  );
}
