import type { Formatter } from '@/app/_words/formatter';
import type { compareCounts } from '@/lib/names/compareCounts';

type Compared = Omit<ReturnType<typeof compareCounts>, 'byNames' | 'byQuantities'>;

/**
 * How the names of an item and its quantities stand to each other, size by size: “11 L ordered, 12 named”.
 *
 * @returns null where nothing differs
 */
export function nameCountWords(
  { ordered, named, differences, withoutSize, unknown }: Compared,
  formatter: Pick<Formatter, 'number' | 'count'>,
): string | null {
  const parts = [
    ...differences.map(
      ({ size, ordered: wanted, named: have }) =>
        `${formatter.number(wanted, 0)} ${size} ordered, ${formatter.number(have, 0)} named`,
    ),
    ...unknown.map(
      ({ size, quantity }) => `${formatter.number(quantity, 0)} in “${size}”, which the blank has not`,
    ),
    ...(withoutSize === 0 ? [] : [`${formatter.number(withoutSize, 0)} without a size`]),
  ];
  if (parts.length === 0) return null;
  const sums = `${formatter.count(ordered, 'piece')} ordered, ${formatter.count(named, 'name')}`;
  return `${sums}: ${parts.join('; ')}.`;
}
