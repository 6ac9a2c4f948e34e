'use client';

import { useEffect, useRef, useState } from 'react';
import type { JobAnswer } from '@/lib/priceJob';
import type { JobInput } from '@/shared/schemas/request';
import { type PriceService, startPriceService } from './priceService';

export interface PricedJobState {
  /** The newest answer; null until the first arrives. */
  readonly answer: JobAnswer | null;
  /** The newest answer that had prices: shown, and marked as such, while a stop stands. */
  readonly lastPriced: JobAnswer | null;
  /** A fault of the app itself, in its own words; null when all is well. */
  readonly failure: string | null;
}

/** Prices a job in the worker whenever it changes. */
export function usePricedJob(input: JobInput | null): PricedJobState {
  const service = useRef<PriceService | null>(null);
  const [state, setState] = useState<PricedJobState>({ answer: null, lastPriced: null, failure: null });

  useEffect(() => {
    const started = startPriceService();
    service.current = started;
    return () => {
      service.current = null;
      started.stop();
    };
  }, []);

  useEffect(() => {
    if (input === null) return;
    service.current?.ask(input, (reply) => {
      setState((before) =>
        reply.kind === 'failed'
          ? { ...before, failure: reply.why }
          : {
              answer: reply.answer,
              lastPriced: reply.answer.prices === null ? before.lastPriced : reply.answer,
              failure: null,
            },
      );
    });
  }, [input]);

  return state;
}
