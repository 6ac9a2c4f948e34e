'use client';

import { OneFile } from '@/app/_attachments/OneFile';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import { answerWayWords } from '@/app/_words/orders/notes/orderStepWords';
import { textLimits } from '@/shared/limits';
import { orderEventSchema } from '@/shared/schemas/orderEvents';
import { choicesOf } from './choicesOf';
import type { AnswerTyped } from './useAnswer';

/** Who said yes, how it was said, and what shows it. */
export function AnswerFields({ answer }: Readonly<{ answer: AnswerTyped }>) {
  const { by, how, setHow, proof, setProof } = answer;
  return (
    <>
      <FieldGroup>
        <TextField label="Who said so" {...by} {...textLimits(orderEventSchema, ['step', 'by'])} />
        <ChoiceField label="How" value={how} choices={choicesOf(answerWayWords)} onCommit={setHow} />
      </FieldGroup>
      <OneFile
        label="What shows it, such as the signed paper; may stay empty"
        purpose="approval"
        value={proof}
        onChange={setProof}
      />
    </>
  );
}
