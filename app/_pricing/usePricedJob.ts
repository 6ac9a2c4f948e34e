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
  const answered = useRef<JobInput | null>(null);

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
    service.current?.ask('job', input, (reply) => {
      const show = () =>
        setState((before) =>
          reply.kind === 'missing'
            ? { ...before, failure: reply.failure }
            : withAnswer(before, priced(reply.answer, reply.isLast)),
        );
      const before = answered.current;
      answered.current = input;
      // The first fills the whole docket, a picture changes most of it, and nobody is in the middle of anything: they are
      // drawn bit by bit between the keys, and seen all at once. Others follow the hand.
      if (before === null || hasOtherPictures(before, input)) startTransition(show);
      else show();
    });
  }, [input]);

  return state;
}

/** What did not change is the same object. */
const hasOtherPictures = (before: JobInput, now: JobInput): boolean =>
  Object.entries(now.artworks).some(([id, { picture }]) => before.artworks[id]?.picture !== picture);

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
