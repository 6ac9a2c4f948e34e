import { breakListOf } from '@/lib/price/list/breakList';
import { type Inversion, inversions } from '@/lib/price/list/inversions';
import type { LineList } from '@/lib/price/list/lineList';
import type { MinorUnits } from '@/shared/money';

/** A stretch of quantities whose total is above a later one's, with the sizes it holds for. */
export interface ListInversion extends Inversion {
  readonly lineId: string;
  readonly sizes: readonly string[];
}

/**
 * The stretches of lists as they are sold: those that stand as they are typed may have some, every other rule has none.
 *
 * @returns sizes of a line with the very same stretch are told together
 */
export function listInversions(lists: readonly LineList[], currency: string): readonly ListInversion[] {
  const found = new Map<string, ListInversion>();
  for (const list of lists) {
    for (const { size, more } of list.sizes) {
      for (const stretch of stretchesOf(list, more, currency)) {
        const key = JSON.stringify([list.lineId, stretch]);
        const known = found.get(key);
        found.set(key, { ...stretch, lineId: list.lineId, sizes: [...(known?.sizes ?? []), size] });
      }
    }
  }
  return [...found.values()];
}

function stretchesOf(list: LineList, more: MinorUnits, currency: string): readonly Inversion[] {
  if (list.rule !== 'asListed') return [];
  const listed = breakListOf(
    list.breaks.map(({ from, each }) => ({ from, each: (each + more) as MinorUnits })),
    currency,
  );
  return listed.ok ? inversions(listed.value) : [];
}
