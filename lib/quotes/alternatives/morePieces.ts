import { costInput } from '@/lib/costing/costInput';
import type { Grid } from '@/lib/grid/evaluateGrid';
import type { LineList } from '@/lib/price/list/lineList';
import { priceLine } from '@/lib/price/priceTable';
import { type SoldLine, type SoldSize, soldPieces, soldSize } from '@/lib/quotes/soldLine';
import type { MinorUnits } from '@/shared/money';
import type { JobInput } from '@/shared/schemas/request';
import { splitWhole } from '@/shared/splitWhole';

/** @returns the list that a line would have with its set-up apart, as the sums suggest it; null where none can be made. */
function setUpApartList(input: JobInput, lineId: string, grid: Grid): LineList | null {
  const lines = input.job.lines.map((line) =>
    line.id === lineId ? { ...line, selling: 'setUpApart' as const, ownPrices: [] } : line,
  );
  const costed = costInput({ ...input, job: { ...input.job, lines } }, grid);
  const line = costed?.laidOut.job.lines.find((one) => one.line.id === lineId);
  return costed === null || line === undefined ? null : priceLine(costed, line, grid).list;
}

/**
 * Pieces beyond the asked ones: the set-up is paid already, so that each costs the piece price of its size with the
 * set-up apart. Those that were asked for stay at their price.
 *
 * @param quantity of the line in all, more than is asked
 * @param size that the further ones are of; null spreads them as the asked ones
 * @param written takes an amount as the way of selling writes it to what stands on the paper
 * @returns null where a size has no such price
 */
export function withMorePieces(
  asked: SoldLine,
  { quantity, size }: { readonly quantity: number; readonly size: string | null },
  input: JobInput,
  grid: Grid,
  written: (amount: MinorUnits) => MinorUnits,
): SoldLine | null {
  const further = furtherOf(asked, quantity - soldPieces(asked), size);
  const list = setUpApartList(input, asked.lineId, grid);
  const [first] = list?.breaks ?? [];
  if (list === null || first === undefined) return null;
  const more = new Map(list.sizes.map((one) => [one.size, one.more]));
  const rows = further.flatMap((one): readonly SoldSize[] => {
    const adds = more.get(one.size);
    if (adds === undefined) return [];
    return [soldSize(one.size, one.quantity, written((first.each + adds) as MinorUnits))];
  });
  if (rows.length < further.length) return null;
  return { ...asked, sizes: besideTheirSize(asked.sizes, rows) };
}

// Helpers

function furtherOf(
  { sizes }: SoldLine,
  count: number,
  size: string | null,
): readonly { readonly size: string; readonly quantity: number }[] {
  if (size !== null) return [{ size, quantity: count }];
  const asked = sizes.reduce((sum, { quantity }) => sum + quantity, 0);
  const parts = splitWhole(
    count,
    sizes.map(({ quantity }) => (quantity * count) / asked),
  );
  return sizes.flatMap((one, index) => {
    const quantity = parts[index] ?? 0;
    return quantity === 0 ? [] : [{ size: one.size, quantity }];
  });
}

/** Each further row behind the asked one of its size. */
function besideTheirSize(asked: readonly SoldSize[], further: readonly SoldSize[]): readonly SoldSize[] {
  const known = new Set(asked.map(({ size }) => size));
  return [
    ...asked.flatMap((row) => [row, ...further.filter(({ size }) => size === row.size)]),
    ...further.filter(({ size }) => !known.has(size)),
  ];
}
