import type { Formatter } from '@/app/_words/formatter';

/**
 * What pieces that came home from an earlier day cost this one.
 *
 * @param pieces of those that come along
 * @returns null where there are none
 */
export function fromHomeWords(pieces: number, { count }: Pick<Formatter, 'count'>): string | null {
  if (pieces === 0) return null;
  return pieces === 1
    ? '1 piece from home was written down before. Sold, it costs what it was still worth; unsold, it loses nothing more.'
    : `${count(pieces, 'piece')} from home were written down before. Sold, they cost what they were still worth; unsold, they lose nothing more.`;
}
