import { type PaperBodies, paperKinds } from '@/lib/kinds/paperKinds';
import type { Paper } from '@/shared/schemas/happened';
import { entriesOf } from './bodiesOf';
import type { CopyOfFile } from './copyOfFile';

export type KeptPaper<Kind extends keyof PaperBodies> = Paper<Kind, PaperBodies[Kind]> & {
  readonly withdrawn: boolean;
};

/** @returns papers of a kind, in the one order. */
export function papersOf<Kind extends keyof PaperBodies>(
  kind: Kind,
  { copy, inForce }: Extract<CopyOfFile, { readonly kind: 'copy' }>,
): readonly KeptPaper<Kind>[] {
  const issued = new Set(entriesOf('issuing', inForce).map(({ body }) => body.paperId));
  return copy.papers
    .filter((paper) => isOf(kind, paper))
    .map((paper) => ({ ...paper, withdrawn: !issued.has(paper.id) }))
    .toSorted((one, other) => one.at - other.at || one.count - other.count);
}

// Helpers

/** Their bodies have been read by the schema of the kind already, which the type of papers cannot say. */
const isOf = <Kind extends keyof PaperBodies>(
  kind: Kind,
  paper: Paper,
): paper is Paper<Kind, PaperBodies[Kind]> =>
  paper.kind === kind && paperKinds[kind].schema.safeParse(paper.body).success;
