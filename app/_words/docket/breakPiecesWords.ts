import { breakWords } from './breakWords';

/**
 * The pieces of a break with their noun.
 *
 * @example breakPiecesWords({ from: 1, to: 1 }) // => '1 piece'
 */
export function breakPiecesWords(span: { readonly from: number; readonly to: number | null }): string {
  const { from, to } = span;
  if (to === null) return `${from} ${from === 1 ? 'piece' : 'pieces'} and up`;
  return `${breakWords(span)} ${to === 1 ? 'piece' : 'pieces'}`;
}
