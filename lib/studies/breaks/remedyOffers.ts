import type { CostedJob } from '@/lib/grid/costJob';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import type { CaseEvaluator } from '@/lib/price/caseEvaluator';
import type { TablePrice } from '@/lib/price/priceTable';
import { sizeCharges } from '@/lib/price/sizeCharges';
import type { Change } from '@/shared/finding';
import { fromMinor, type MinorUnits } from '@/shared/money';
import { type BreakList, breakListOf } from './breakList';
import { inversions } from './inversions';
import { remedies } from './remedies';
import type { Selling } from './selling';
import { type SellingEffect, sellingEffects } from './sellingEffects';
import { sizesAsSold } from './sizesAsSold';
import type { WrittenTariff } from './writtenTariff';

/** A remedy that one tap takes. */
export interface RemedyOffer {
  readonly kind: Exclude<Selling['kind'], 'asListed'>;
  /** The sizes its effects are told of. */
  readonly sizes: readonly string[];
  /** At both ends of every stretch that more pieces would end. */
  readonly effects: readonly SellingEffect[];
  /** The breaks it leads to; null where they stay. */
  readonly breaks: BreakList['breaks'] | null;
  /** How many prices of the first breaks fall away, because those that follow begin before them. */
  readonly dropped: number;
  readonly changes: readonly Change[];
}

interface RemedyCase {
  readonly costed: CostedJob;
  readonly line: ResolvedLine;
  /** The cells of the line. */
  readonly table: readonly TablePrice[];
  readonly tariff: WrittenTariff | null;
  readonly evaluate: CaseEvaluator;
}

/**
 * The remedies of a line's list as changes of documents. Softening and shifting write the maker's own price for every
 * break: a suggestion would move with the break, and the edge with it. They are reckoned on the size that adds least:
 * what is clean there is clean wherever a charge comes on top.
 */
export function remedyOffers({ costed, line, table, tariff, evaluate }: RemedyCase): readonly RemedyOffer[] {
  const { job } = costed.laidOut;
  const { currency, policy } = job.workshop;
  const charges = sizeCharges(costed, line).map((charge, index) => ({
    charge,
    size: line.sizes[index]?.size ?? '',
  }));
  const [first] = charges;
  if (first === undefined) return [];
  const least = charges.reduce((less, next) => (next.charge < less.charge ? next : less), first);
  const before = listAt(table, least.size, currency);
  const falling = line.sizes.map(({ size }) => listAt(table, size, currency)).filter((list) => list !== null);
  const quantities = [
    ...new Set(falling.flatMap((list) => inversions(list)).flatMap(({ to, cheaperAt }) => [to, cheaperAt])),
  ].sort((a, b) => a - b);
  if (before === null) return [];
  // What each break would cost in that size if all breaks had own prices.
  const own = breakListOf(
    before.breaks.map(({ from }) => ({
      from,
      each: (basePrice(table, from) - first.charge + least.charge) as MinorUnits,
    })),
    currency,
  );
  if (!own.ok) return [];
  const index = job.job.lines.findIndex(({ id }) => id === line.line.id);
  const set = (field: string, value: unknown): Change => ({
    document: 'job',
    path: ['lines', index, field],
    value,
  });
  const ownPrices = (list: BreakList) =>
    list.breaks.map(({ from, each }) => ({
      from,
      each: fromMinor((each - least.charge) as MinorUnits, currency),
    }));
  const mix = line.sizes.map(({ size }) => size);
  const alike = mix.filter(
    (size) => JSON.stringify(listAt(table, size, currency)?.breaks) === JSON.stringify(before.breaks),
  );
  const apart = job.ownRows.some(({ cost }) => cost.kind === 'formula');
  return remedies(own.value, tariff, policy.priceStep).flatMap((remedy): readonly RemedyOffer[] => {
    if (remedy.kind === 'asListed') return [];
    const sizes = remedy.kind === 'tariff' ? mix : alike;
    const sold = soldWith(remedy, before);
    return [
      {
        kind: remedy.kind,
        sizes,
        effects: sellingEffects(
          { kind: 'asListed', list: before },
          sold,
          quantities,
          currency,
          sizesAsSold(line, sizes, apart),
          evaluate,
        ),
        breaks: remedy.kind === 'softened' || remedy.kind === 'shifted' ? remedy.list.breaks : null,
        dropped: remedy.kind === 'shifted' ? before.breaks.length - remedy.list.breaks.length : 0,
        changes: changesOf(remedy),
      },
    ];
  });

  function changesOf(remedy: Selling): readonly Change[] {
    switch (remedy.kind) {
      case 'asListed':
      case 'cap':
      case 'slab':
      case 'tariff':
        return [set('selling', remedy.kind)];
      case 'softened':
        return [set('ownPrices', ownPrices(remedy.list))];
      case 'shifted':
        return [
          {
            document: 'workshop',
            path: ['policy', 'breaks'],
            value: remedy.list.breaks.map(({ from }) => from),
          },
          set('ownPrices', ownPrices(remedy.list)),
        ];
      default:
        return remedy satisfies never;
    }
  }
}

function listAt(table: readonly TablePrice[], size: string, currency: string): BreakList | null {
  const cells = table.filter((cell) => cell.size === size);
  const list = breakListOf(
    cells.map(({ from, price }) => ({ from, each: price })),
    currency,
  );
  return list.ok ? list.value : null;
}

/** Price of the first size of the line. */
const basePrice = (table: readonly TablePrice[], from: number): number =>
  table.find((cell) => cell.from === from)?.price ?? 0;

/** What a remedy sells by, on the list that stands or on one of its own. */
function soldWith(remedy: Selling, before: BreakList): Selling {
  switch (remedy.kind) {
    case 'asListed':
    case 'cap':
    case 'slab':
      return { kind: remedy.kind, list: before };
    case 'tariff':
    case 'softened':
    case 'shifted':
      return remedy;
    default:
      return remedy satisfies never;
  }
}
