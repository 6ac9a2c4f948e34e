'use client';

import { startTransition, useEffect, useRef, useState } from 'react';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import type { JobAnswer } from '@/lib/costing/priceJob';
import type { SharedLook } from '@/lib/layout/layoutSearch';
import type { JobInput } from '@/shared/schemas/request';
import type { LaidOutAnswer } from './laidOutAnswers';
import { type PriceService, startPriceService } from './priceService';

/** An answer with the documents it is the answer to, and the layouts it was made by. */
export interface PricedJob {
  readonly input: JobInput;
  readonly answer: JobAnswer;
  /** Null where no sheets are shared. */
  readonly shared: SharedLook | null;
}

export interface PricedJobState {
  /** The newest answer; null until the first arrives. */
  readonly answer: JobAnswer | null;
  /** The newest that had a layout and a cost sheet. */
  readonly lastCosted: PricedJob | null;
  /** The newest that had prices: shown, and marked as such, while a stop stands. */
  readonly lastPriced: PricedJob | null;
  /** Why the newest question has no answer; null when all is well. */
  readonly failure: WorkerFailure | null;
}

const nothingYet: PricedJobState = { answer: null, lastCosted: null, lastPriced: null, failure: null };

/** Prices a job in the worker whenever it changes. */
export function usePricedJob(input: JobInput): PricedJobState {
  const service = useRef<PriceService | null>(null);
  const [state, setState] = useState(nothingYet);
  const hasAnswered = useRef(false);

  useEffect(() => {
    const started = startPriceService();
    service.current = started;
    return () => {
      service.current = null;
      started.stop();
    };
  }, []);

  useEffect(() => {
    const priced = pricedBy(input);
    service.current?.ask('job', input, (answered) => {
      const show = () =>
        setState((before) =>
          answered.kind === 'missing'
            ? { ...before, failure: answered.failure }
            : withAnswer(before, priced(answered.answer, answered.isLast)),
        );
      if (hasAnswered.current) return show();
      hasAnswered.current = true;
      // The first fills the whole docket and nobody is in the middle of anything; later ones follow the hand.
      startTransition(show);
    });
  }, [input]);

  return state;
}

/** @returns makes answers of one job; documents with the same layouts stay the same object, so that nothing is asked again. */
function pricedBy(input: JobInput) {
  let made = input;
  return (given: LaidOutAnswer, isLast: boolean): PricedJob => {
    const { answer, layouts, shared } = given;
    // Whatever is asked of these documents from here on is worked out by the same layouts.
    if (layouts !== made.layouts) made = { ...input, layouts };
    return { input: made, answer, shared: shared && { ...shared, isLooking: !isLast } };
  };
}

const withAnswer = (before: PricedJobState, priced: PricedJob): PricedJobState => ({
  answer: priced.answer,
  lastCosted: priced.answer.costSheet === null ? before.lastCosted : priced,
  lastPriced: priced.answer.prices === null ? before.lastPriced : priced,
  failure: null,
});
