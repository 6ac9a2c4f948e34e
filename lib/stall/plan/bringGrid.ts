import { designKey } from '@/lib/stall/designKey';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallDay, StallGoods } from '@/shared/schemas/stallDay';
import type { GoodsPlanned } from './stallPlanned';

/** One field of the grid: how many of a size the maker brings, and what is advised. Pieces. */
export interface BringCell extends StallGoods {
  /** The maker's number; null where none is held, and the advice is brought. */
  readonly held: number | null;
  readonly advised: number;
}

export interface BringRow {
  readonly jobId: string;
  readonly lineId: string;
  readonly design: string;
  readonly cells: readonly BringCell[];
  readonly mine: number;
  readonly advised: number;
}

export interface BringRange {
  readonly rangeId: string;
  readonly name: string;
  /** Empty for goods of one size, whose designs stand side by side. */
  readonly sizes: readonly string[];
  readonly rows: readonly BringRow[];
  readonly mine: number;
  readonly advised: number;
  readonly bySize: readonly { readonly size: string; readonly mine: number; readonly advised: number }[];
}

/**
 * Lays out what is brought by range, design and size. The maker's numbers are those of the document, so that a number
 * stands there with the key that typed it; the advice is that of the sums made last.
 *
 * @param goods as planned last
 */
export function bringGrid(
  { ranges, held }: Pick<StallDay, 'ranges' | 'held'>,
  goods: readonly GoodsPlanned[],
): readonly BringRange[] {
  const typed = new Map(held.map((one) => [goodsKey(one), one.bring]));
  return ranges.flatMap(({ id, name, sizes: mix }) => {
    const own = goods.filter(({ rangeId }) => rangeId === id);
    if (own.length === 0) return [];
    const cells = own.map((one) => ({
      ...{ jobId: one.jobId, lineId: one.lineId, size: one.size, design: one.design },
      held: typed.get(goodsKey(one)) ?? null,
      advised: one.advised,
    }));
    const sizes = mix === null ? [] : [...new Set(cells.map(({ size }) => size))];
    const designs = [...new Map(cells.map((cell) => [designKey(cell), cell])).values()];
    return [
      {
        ...{ rangeId: id, name, sizes },
        ...sumOf(cells),
        rows: designs.map(({ jobId, lineId, design }) => {
          const row = cells.filter((cell) => designKey(cell) === designKey({ jobId, lineId }));
          return { jobId, lineId, design, cells: row, ...sumOf(row) };
        }),
        bySize: sizes.map((size) => ({ size, ...sumOf(cells.filter((cell) => cell.size === size)) })),
      },
    ];
  });
}

/** @returns what of a cell is brought: the maker's own number, else the advice */
export const broughtOf = ({ held, advised }: Pick<BringCell, 'held' | 'advised'>): number => held ?? advised;

// Helpers

const sumOf = (cells: readonly Pick<BringCell, 'held' | 'advised'>[]) => ({
  mine: cells.reduce((sum, cell) => sum + broughtOf(cell), 0),
  advised: cells.reduce((sum, { advised }) => sum + advised, 0),
});
