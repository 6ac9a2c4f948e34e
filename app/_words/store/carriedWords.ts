import type { Formatter } from '@/app/_words/formatter';
import { withWords } from './arrivalWords';
import { bytesWords } from './bytesWords';

/** @returns what a carried file holds: “It holds Club shirts, with 1 blank and 2 pictures, 3 MB.” */
export function carriedWords(
  what: { readonly kind: string; readonly name: string },
  kinds: Readonly<Record<string, number>>,
  bytes: number,
  formatter: Pick<Formatter, 'count' | 'number'>,
): string {
  const others = { ...kinds, [what.kind]: Math.max(0, (kinds[what.kind] ?? 0) - 1) };
  const withIt = withWords(others, formatter);
  return `It holds ${what.name}${withIt === '' ? '' : `, with ${withIt}`}, ${bytesWords(bytes, formatter)}.`;
}
