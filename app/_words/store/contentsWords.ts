import type { Formatter } from '@/app/_words/formatter';
import type { Holdings } from '@/lib/copies/holdings';
import { bytesWords } from './bytesWords';
import { entryParts } from './entryWords';

type Counting = Pick<Formatter, 'count' | 'number'>;

const kindsInOrder = [
  ['job', 'job'],
  ['order', 'order'],
  ['customer', 'customer'],
  ['priceList', 'list'],
  ['stallDay', 'stall day'],
  ['shop', 'shop'],
  ['run', 'run'],
  ['buyingList', 'buying list'],
  ['supplier', 'supplier'],
  ['consumable', 'consumable'],
  ['blank', 'blank'],
  ['artwork', 'artwork'],
] as const;

/** @returns how much of each there is; what there is none of is left out, and so are the rates, which are always there. */
export function holdingParts(
  { kinds, papers, entries, files }: Holdings,
  formatter: Counting,
): readonly string[] {
  const counted = [
    ...kindsInOrder.map(([kind, word]) => [kinds[kind] ?? 0, word] as const),
    [papers, 'paper'] as const,
  ];
  return [
    ...counted.flatMap(([count, one]) => (count > 0 ? [formatter.count(count, one)] : [])),
    ...entryParts(entries, formatter.number),
    ...(files > 0 ? [formatter.count(files, 'picture file')] : []),
  ];
}

/**
 * What a copy holds, or what is here, in one line; empty where there is nothing.
 *
 * @param bytes null where that is not told
 * @example contentsWords(holdings, 31_000_000, formatter) // '9 jobs, 2 lists, 14 artworks, 31 MB'
 */
export function contentsWords(holdings: Holdings, bytes: number | null, formatter: Counting): string {
  const words = holdingParts(holdings, formatter);
  const size = bytes === null ? [] : [bytesWords(bytes, formatter)];
  const rates = words.length === 0 && (holdings.kinds.workshop ?? 0) > 0 ? ['your rates'] : words;
  return [...rates, ...size].join(', ');
}

/** @returns that a copy was saved, under which name, and what it holds. */
export const copySavedWords = (
  name: string,
  { holds, bytes }: { readonly holds: Holdings; readonly bytes: number },
  formatter: Counting,
): string => `Saved as ${name}: ${contentsWords(holds, bytes, formatter)}.`;
