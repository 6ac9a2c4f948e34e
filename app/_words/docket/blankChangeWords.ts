import type { Formatter } from '@/app/_words/formatter';
import type { Blank } from '@/shared/schemas/blank';
import type { Line } from '@/shared/schemas/job';
import { pieceWords } from './pieceWords';

/**
 * What undo says of a line that is made on another blank: besides the blank itself what went with it, so that nothing
 * the maker typed is gone in silence.
 *
 * @param from what it was made on; undefined where that is not there any more
 */
export function blankChangeWords(
  before: Line,
  after: Line,
  from: Blank | undefined,
  formatter: Formatter,
): string {
  const renamed = before.placements.flatMap((placement) => {
    const now = after.placements.find(({ id }) => id === placement.id);
    if (now === undefined) return [`“${placement.name}” is taken off`];
    return now.name === placement.name ? [] : [`“${placement.name}” is now “${now.name}”`];
  });
  const priced =
    before.askedPrice !== null && after.askedPrice === null
      ? [`the asked ${formatter.money(before.askedPrice)} was for a ${pieceWords(from).one}`]
      : [];
  return [`Blank of ${before.name}`, ...renamed, ...priced].join('; ');
}
