import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { paperText } from '@/app/_words/customers/paperText';
import { planErasure } from '@/lib/erasing/planErasure';
import { claimedName } from '@/lib/stored/claimedName';

/** What an erasure leaves, as a screen names it. */
export interface ErasureLeaves {
  /** As in “quote 26-014A, version 2”. */
  readonly papers: readonly string[];
  readonly stillNamed: readonly string[];
}

/** @returns what erasing a customer would leave; null where the customer is gone meanwhile */
export function erasureLeaves(
  { documents, removed, papers, allEntries }: ReadyWorkspace,
  customerId: string,
  day: string,
): ErasureLeaves | null {
  const everyPaper = Object.values(papers).flat();
  const plan = planErasure(
    customerId,
    { drafts: [...documents, ...removed], papers: everyPaper, entries: allEntries() },
    day,
  );
  if (plan === null) return null;
  return {
    papers: plan.papersKept.map(paperText),
    stillNamed: plan.stillNamed.flatMap((draft) => claimedName(draft) ?? []),
  };
}
