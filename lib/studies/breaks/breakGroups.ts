import type { CostedJob } from '@/lib/grid/costJob';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import type { TablePrice } from '@/lib/price/priceTable';
import type { SellingRule } from '@/shared/schemas/sellingRule';
import type { BreakList } from './breakList';
import { firstFall } from './firstFall';
import { type Inversion, inversions } from './inversions';
import { nextPieceFloor } from './nextPieceFloor';
import type { Selling } from './selling';
import { tableBreakLists } from './tableBreakLists';
import { type ThinStep, thinSteps } from './thinSteps';
import { type Tie, ties } from './ties';
import type { WrittenTariff } from './writtenTariff';

/** Sizes of a line whose prices are the same in every break, and what their list does as the quantity rises. */
export interface BreakGroup {
  readonly sizes: readonly string[];
  readonly list: BreakList;
  /** How the list is reckoned; as it stands where a rule cannot be kept. */
  readonly sold: Selling;
  /** Of the list as it stands: quantities that would cost more than a larger one. */
  readonly stretches: readonly Inversion[];
  readonly ties: readonly Tie[];
  /** The first quantity of 1 to 2,000 that costs less than the one before, by the rule in force; null for none. */
  readonly falls: number | null;
  /** Pieces that bring in less than they cause, by the rule in force; those that bring in less than nothing fall. */
  readonly thin: readonly ThinStep[];
  /** What a next piece must bring in at the least, currency units, as the channel writes prices. */
  readonly nextPieceFloor: number;
}

/** @param tariff what the line would be written at as so much to start and so much a piece */
export function breakGroups(
  { sheet, laidOut }: CostedJob,
  { line, sizes }: ResolvedLine,
  table: readonly TablePrice[],
  tariff: WrittenTariff | null,
): readonly BreakGroup[] {
  const { currency } = laidOut.job.workshop;
  const groups = new Map<string, { readonly list: BreakList; readonly sizes: readonly string[] }>();
  for (const { lineId, size, list } of tableBreakLists(table, currency)) {
    if (lineId !== line.id) continue;
    // So much to start and a piece is asked for the mix: one list for all of it.
    const key = line.selling === 'tariff' && tariff !== null ? '' : JSON.stringify(list.breaks);
    const known = groups.get(key);
    groups.set(key, { list: known?.list ?? list, sizes: [...(known?.sizes ?? []), size] });
  }
  return [...groups.values()].map((group): BreakGroup => {
    const sold = soldBy(line.selling, group.list, tariff);
    const index = sheet.cases.findIndex(
      ({ lineId, size }) => lineId === line.id && size === (group.sizes[0] ?? sizes[0]?.size),
    );
    const floor = nextPieceFloor(sheet, index);
    // A rule goes on beyond the last break as it begins there.
    const upTo = (group.list.breaks.at(-1)?.from ?? 1) + 1;
    return {
      ...group,
      sold,
      stretches: inversions(group.list),
      ties: ties(group.list),
      falls: firstFall(sold),
      thin: thinSteps(sold, floor, upTo, currency).filter(({ paid }) => paid >= 0),
      nextPieceFloor: floor,
    };
  });
}

function soldBy(rule: SellingRule, list: BreakList, tariff: WrittenTariff | null): Selling {
  switch (rule) {
    case 'asListed':
    case 'cap':
    case 'slab':
      return { kind: rule, list };
    case 'tariff':
      return tariff === null ? { kind: 'asListed', list } : { kind: 'tariff', tariff };
    default:
      return rule satisfies never;
  }
}
