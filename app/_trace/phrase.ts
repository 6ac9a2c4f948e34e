import type { Operand } from '@/lib/grid/readExpression';

/** A piece of a formula in words: a chip that opens, words or a number between chips, or a bracket. */
export type Phrase =
  | { readonly kind: 'chip'; readonly part: Operand }
  | { readonly kind: 'words'; readonly text: string }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'bracket'; readonly side: 'open' | 'close' };

export const words = (text: string): Phrase => ({ kind: 'words', text });

/** The same, held together by brackets. */
export const bracketed = (phrases: readonly Phrase[]): readonly Phrase[] => [
  { kind: 'bracket', side: 'open' },
  ...phrases,
  { kind: 'bracket', side: 'close' },
];
