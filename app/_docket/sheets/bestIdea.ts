import type { SheetsAnswer } from '@/lib/studies/sheets/sheetsAnswer';
import type { SmallerSize } from '@/lib/studies/sheets/smallerSizes';

/** A change that saves paper. */
export type SheetIdea =
  | { readonly kind: 'smaller'; readonly idea: SmallerSize }
  | { readonly kind: 'together'; readonly idea: NonNullable<SheetsAnswer['together']> };

/** @returns the changes that save paper, the one that saves most money first. */
export function sheetIdeas({ smaller, together }: SheetsAnswer): readonly SheetIdea[] {
  const ideas: readonly SheetIdea[] = [
    ...smaller.map((idea): SheetIdea => ({ kind: 'smaller', idea })),
    ...(together === null ? [] : [{ kind: 'together', idea: together } as const]),
  ];
  return [...ideas].sort((a, b) => b.idea.saved - a.idea.saved);
}
