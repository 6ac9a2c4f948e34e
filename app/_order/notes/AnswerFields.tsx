'use client';

import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import { answerWayWords } from '@/app/_words/orders/orderStepWords';
import { textLimits } from '@/shared/limits';
import { orderEventSchema } from '@/shared/schemas/orderEvents';
import { choicesOf } from './choicesOf';
import { type FileDraft, OneFile } from './OneFile';

/** Who said yes, and how. */
export interface AnswerDraft {
  readonly by: string;
  readonly how: keyof typeof answerWayWords;
  readonly proof: FileDraft | null;
}

type AnswerFieldsProps = Readonly<{ draft: AnswerDraft; onChange: (draft: AnswerDraft) => void }>;

/** Who said yes, how it was said, and what shows it. */
export function AnswerFields({ draft, onChange }: AnswerFieldsProps) {
  const { by, how, proof } = draft;
  return (
    <>
      <FieldGroup>
        <TextField
          label="Who said so"
          value={by}
          {...textLimits(orderEventSchema, ['step', 'by'])}
          onCommit={(value) => onChange({ ...draft, by: value })}
        />
        <ChoiceField
          label="How"
          value={how}
          choices={choicesOf(answerWayWords)}
          onCommit={(value) => onChange({ ...draft, how: value })}
        />
      </FieldGroup>
      <OneFile
        label="What shows it, such as the signed paper; may stay empty"
        purpose="approval"
        value={proof}
        onChange={(value) => onChange({ ...draft, proof: value })}
      />
    </>
  );
}
