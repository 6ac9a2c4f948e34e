'use client';

import { useMemo } from 'react';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import { quoteAsked } from '@/app/_orderBook/quoteAsked';
import type { SureBench } from '@/app/_orderBook/useBench';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import { useOrderStudy } from '@/app/_studies/useOrderStudy';
import { findingWords } from '@/app/_words/findings/findingWords';
import type { TextContext } from '@/app/_words/formatter';
import { sameValue } from '@/lib/merging/sameValue';
import type { MadeQuote, QuoteDraft } from '@/lib/quotes/makeQuote';
import type { QuoteAsked } from '@/lib/quotes/quoteAsked';
import { quoteBody } from '@/lib/quotes/quoteBody';
import type { PaperNumber } from '@/shared/schemas/happened';
import type { Quote } from '@/shared/schemas/orderPapers';

interface AskedQuote {
  readonly asked: QuoteAsked | null;
  /** The last answer; null until the first. */
  readonly made: MadeQuote | null;
  /** True while a newer one is being made: what is shown is no more what would go out. */
  readonly isStale: boolean;
  readonly failure: WorkerFailure | null;
}

/** The quote of an order as it would go out now, made in the study worker. */
export function useQuote(
  { workspace, orderId }: Pick<OrderOnPaper, 'workspace' | 'orderId'>,
  book: OrderBook,
  bench: SureBench,
): AskedQuote {
  const asked = useMemo(() => quoteAsked(workspace, book, bench, orderId), [workspace, book, bench, orderId]);
  const { newest, failure } = useOrderStudy('quote', asked, null);
  return {
    asked,
    made: newest?.answer ?? null,
    // Its days rest on what all orders take.
    isStale:
      newest !== null &&
      asked !== null &&
      ((bench.isWaiting && bench.failure === null) || !sameValue(newest.asked, asked)),
    failure,
  };
}

/** @returns the quote under a number, its risks in the maker’s words. */
export const bodyOfDraft = (draft: QuoteDraft, number: PaperNumber, context: TextContext): Quote =>
  quoteBody(draft, number, (risk) => {
    const { sentence, detail } = findingWords(risk, context);
    return `${sentence} ${detail}`.trim();
  });

/** @returns whether a quote says what a draft would say, whatever its number and day. */
export function saysTheSame(out: Quote, { body }: QuoteDraft): boolean {
  const { number: _, issuedOn: _on, validUntil: _until, owner: _owner, ...said } = out;
  const { issuedOn: _now, validUntil: _then, owner: _side, ...says } = body;
  return sameValue(said, says);
}
