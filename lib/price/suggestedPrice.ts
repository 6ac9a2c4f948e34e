import type { MinorUnits } from '@/shared/money';
import type { TablePrice } from './priceTable';

/**
 * What the list asks for a piece of one size in an order of so many: the maker's own price where one is typed for
 * the break, else what the sums suggest. The one place where a price that nobody has decided comes from.
 *
 * @param pieces good pieces of the line
 * @returns whole minor units as the channel writes prices; null where the list has no such size
 */
export function suggestedPrice(
  table: readonly TablePrice[],
  { lineId, size, pieces }: { readonly lineId: string; readonly size: string; readonly pieces: number },
): MinorUnits | null {
  const ofSize = table.filter((cell) => cell.lineId === lineId && cell.size === size);
  // An order below the first break pays the price of the first.
  return (ofSize.findLast(({ from }) => from <= pieces) ?? ofSize[0])?.price ?? null;
}
