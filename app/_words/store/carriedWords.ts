import type { Formatter } from '@/app/_words/formatter';
import type { Holdings } from '@/lib/copies/holdings';
import { bytesWords } from './bytesWords';
import { holdingParts } from './contentsWords';

/** @returns what hangs on a carried draft, counted: “2 blanks and 3 artworks”. */
export function withItWords(
  kind: string,
  holds: Holdings,
  formatter: Pick<Formatter, 'count' | 'number'>,
): string {
  const kinds = { ...holds.kinds, [kind]: Math.max(0, (holds.kinds[kind] ?? 0) - 1) };
  const parts = holdingParts({ ...holds, kinds }, formatter);
  return ((kinds.workshop ?? 0) > 0 ? [...parts, 'your rates'] : parts)
    .join(', ')
    .replace(/, ([^,]*)$/, ' and $1');
}

/** @returns what a carried file holds: “It holds Club shirts, with 1 blank and 2 artworks, 3 MB.” */
export function carriedWords(
  what: { readonly kind: string; readonly name: string },
  holds: Holdings,
  bytes: number,
  formatter: Pick<Formatter, 'count' | 'number'>,
): string {
  const withIt = withItWords(what.kind, holds, formatter);
  return `It holds ${what.name}${withIt === '' ? '' : `, with ${withIt}`}, ${bytesWords(bytes, formatter)}.`;
}
