'use client';

import { useState } from 'react';
import type { FileDraft } from '@/app/_attachments/OneFile';
import { type TypedField, useTypedChoice, useTypedText } from '@/app/_fields/useTyped';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { answerWayWords } from '@/app/_words/orders/notes/orderStepWords';
import type { OpenForm } from './useOpenForm';

type AnswerWay = keyof typeof answerWayWords;

/** Who said yes, how it was said, and what shows it. */
export interface AnswerTyped {
  readonly by: TypedField<string>;
  readonly how: AnswerWay;
  readonly setHow: (how: AnswerWay) => void;
  /** Files are too large for the tab's memory: a reload asks for it again. */
  readonly proof: FileDraft | null;
  readonly setProof: (proof: FileDraft | null) => void;
}

export function useAnswer({ person, customer }: OrderOnScreen, form: OpenForm): AnswerTyped {
  const by = useTypedText(form, 'by', person?.name ?? customer?.name);
  const [how, setHow] = useTypedChoice(form, 'how', answerWayWords, 'message');
  const [proof, setProof] = useState<FileDraft | null>(null);
  return { by, how, setHow, proof, setProof };
}
