import type { TextContext } from '@/app/_words/formatter';
import type { JobAnswer } from '@/lib/costing/priceJob';
import { jobSheetFacts } from '@/lib/jobSheet/jobSheet';
import type { PaperSource } from '@/lib/papers/paperOf';
import type { JobInput } from '@/shared/schemas/request';
import { benchBody } from './benchBody';
import { ownerBody } from './ownerBody';

export type SheetAnswer = Pick<JobAnswer, 'findings' | 'layout' | 'costSheet' | 'prices'>;

interface SheetSources {
  /** Without a figure of money. */
  readonly bench: PaperSource;
  /** Costs, for the owner alone: a file of its own, so that who sends the other sends no cost. */
  readonly owner: PaperSource;
}

/** @returns a job as two papers; null while a stop stands, for nobody is to press by a plan that does not work */
export function sheetSources(
  input: JobInput,
  { findings, layout, costSheet, prices }: SheetAnswer,
  context: TextContext,
): SheetSources | null {
  if (layout === null || costSheet === null) return null;
  const facts = jobSheetFacts(input, { layout, costSheet });
  return {
    bench: { kind: 'jobSheet', body: benchBody(input, { facts, findings, context }) },
    owner: { kind: 'ownSheet', body: ownerBody(input, { costSheet, prices, context }) },
  };
}
