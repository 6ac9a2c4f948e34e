import type { Contents } from '@/app/_words/store/contentsWords';

/** What is here, as a store or a workspace has it. */
interface Kept {
  readonly documents: readonly { readonly kind: string }[];
  readonly papers: Readonly<Record<string, readonly unknown[]>>;
}

/** @returns how much of each is here, and so would be in a copy. */
export function contentsOf({ documents, papers }: Kept): Omit<Contents, 'bytes'> {
  const count = (kind: string) => documents.filter((document) => document.kind === kind).length;
  return {
    jobs: count('job'),
    lists: count('priceList'),
    blanks: count('blank'),
    pictures: count('artwork'),
    papers: Object.values(papers).flat().length,
  };
}
