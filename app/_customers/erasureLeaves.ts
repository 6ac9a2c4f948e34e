import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { paperText } from '@/app/_words/customers/paperText';
import { stillNamedText } from '@/app/_words/customers/stillNamedText';
import { planErasure, type StillNamed } from '@/lib/erasing/planErasure';
import { claimedName } from '@/lib/stored/claimedName';

/** What an erasure leaves, as a screen names it. */
export interface ErasureLeaves {
  /** As in “quote 26-014A, version 2”. */
  readonly papers: readonly string[];
  /** Texts in which it may be named still, as in “charge “Drive to Alex””. */
  readonly ownDrafts: readonly string[];
  readonly ownEntries: readonly string[];
  readonly elsewhere: readonly string[];
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
  const changed = new Map(plan.drafts.map((draft) => [draft.id, draft]));
  const nameOf = (id: string) =>
    claimedName(changed.get(id) ?? documents.find((document) => document.id === id));
  const told = (where: StillNamed['where']) => [
    ...new Set(
      plan.stillNamed.flatMap((one) => (one.where === where ? [stillNamedText(one, nameOf(one.id))] : [])),
    ),
  ];
  return {
    papers: plan.papersKept.map(paperText),
    ownDrafts: told('ownDraft'),
    ownEntries: told('ownEntry'),
    elsewhere: told('elsewhere'),
  };
}

/** @returns the orders of a customer, removed ones among them */
export const ordersOf = (
  customerId: string,
  { documents, removed }: Pick<ReadyWorkspace, 'documents' | 'removed'>,
): readonly string[] =>
  [...documents, ...removed].flatMap((one) =>
    one.kind === 'order' && one.body.customerId === customerId ? [one.id] : [],
  );
