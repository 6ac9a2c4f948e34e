import type { Formatter } from '@/app/_words/formatter';

export const homeWords = {
  label: 'Finished at home',
  pieces: 'Pieces',
  rule: 'What is counted here was made and paid before. Say by its button what was pressed for this day.',
  missing: 'Type what you counted first; an empty field notes nothing.',
  note: 'Note what was counted',
} as const;

/** What is noted of some goods at home; null is not 0. */
export function knownWords(pieces: number | null, { number }: Pick<Formatter, 'number'>): string {
  if (pieces === null) return 'Not counted yet.';
  return pieces < 0
    ? `${number(-pieces, 0)} more went out than came in: count them.`
    : `${number(pieces, 0)} noted.`;
}
