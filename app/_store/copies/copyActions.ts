import type { SaveFailure } from '@/app/_backend/saveFailure';
import type { ReplaceOutcome } from '@/app/_store/documentsState';
import type { ArrivalChoice, ArrivalPlan } from '@/lib/copies/arrival';
import type { LackingFile, NotACopy } from '@/lib/copies/copy';
import type { Holdings } from '@/lib/copies/holdings';

/** A copy as it is handed to the maker. */
export interface CopyMade {
  readonly file: Blob;
  readonly holds: Holdings;
  /** Files that are named and not in it. */
  readonly leftOut: readonly LackingFile[];
  /** Why it could not be noted that the copy was made; null where it was. The copy is whole all the same. */
  readonly notNoted: SaveFailure | null;
}

/** What was found in a file. */
export type CopyLook =
  | { readonly state: 'copy'; readonly file: Blob; readonly plan: ArrivalPlan }
  | { readonly state: 'notACopy'; readonly why: NotACopy };

/** Copies of everything, and carrying of one draft: out and in. */
export interface CopyActions {
  /**
   * Everything, or one draft with what hangs on it. `madeOn` is what the maker calls the device, for whoever looks at
   * the copy. Made of what is shown, so that it can be had when the store fails.
   */
  readonly makeCopy: (
    what: 'everything' | { readonly kind: string; readonly id: string },
    madeOn?: string | null,
  ) => Promise<CopyMade>;
  /** Reads a file and holds it against what is here. Writes nothing. */
  readonly lookAtCopy: (file: Blob) => Promise<CopyLook>;
  /** Takes in what was looked at, planned anew against what is here by now; one step to undo. */
  readonly takeCopy: (
    label: string,
    look: Extract<CopyLook, { readonly state: 'copy' }>,
    how: ArrivalChoice,
  ) => Promise<ReplaceOutcome>;
}
