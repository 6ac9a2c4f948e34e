'use client';

import { useEffect, useRef, useState } from 'react';
import type { SheetsAnswer } from '@/lib/sheets/sheetsAnswer';
import type { JobInput } from '@/shared/schemas/request';
import { type SheetsService, startSheetsService } from './sheetsService';

export interface SheetsState {
  /** The newest answer with the documents it is of; null until the first arrives. */
  readonly newest: { readonly input: JobInput; readonly answer: SheetsAnswer } | null;
  /** A fault of the app itself, in its own words. */
  readonly failure: string | null;
}

const nothingYet: SheetsState = { newest: null, failure: null };

/**
 * Lays a costed job out and compares its sheets in a worker of its own.
 *
 * @param input documents that were costed; null where nothing is
 */
export function useSheetsAnswer(input: JobInput | null): SheetsState {
  const service = useRef<SheetsService | null>(null);
  const [state, setState] = useState(nothingYet);

  useEffect(
    () => () => {
      service.current?.stop();
      service.current = null;
    },
    [],
  );

  useEffect(() => {
    if (input === null || typeof Worker === 'undefined') return;
    service.current ??= startSheetsService();
    service.current.ask(input, (reply) => {
      if (reply.kind === 'failed') setState((before) => ({ ...before, failure: reply.why }));
      else if (reply.answer !== null) setState({ newest: { input, answer: reply.answer }, failure: null });
    });
  }, [input]);

  return state;
}
