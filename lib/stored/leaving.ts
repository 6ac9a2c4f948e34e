import type { PaperNumber } from '@/shared/schemas/happened';

/** An entry that a document held inside until then. */
export interface LeavingEntry {
  readonly kind: string;
  /** Version of the shape of the body. */
  readonly version: number;
  /** When it happened, as well as is known, ms since 1970. */
  readonly at: number;
  readonly body: unknown;
}

/** A paper that a document held inside until then; it counts as issued, so an entry that says so comes with it. */
export interface LeavingPaper extends LeavingEntry {
  readonly series: string;
  readonly number: PaperNumber;
  readonly about: { readonly kind: string; readonly id: string };
}

/** What a document no longer holds in the next version of its shape: it becomes entries and papers. */
export interface Leaving {
  readonly entries: readonly LeavingEntry[];
  readonly papers: readonly LeavingPaper[];
}

/** The document that something leaves, and when it was last written. */
interface Origin {
  readonly id: string;
  readonly at: number;
}

/** Tells what leaves a body with the step to the next version. Pure, from the body as it was before that step. */
export type Parting = (body: unknown, origin: Origin) => Leaving;
