import { checkJob } from '@/lib/check/checkJob';
import { costInput } from '@/lib/costing/costInput';
import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import { caseEvaluator } from '@/lib/price/caseEvaluator';
import { judgedJob } from '@/lib/price/list/judgedJob';
import { sellingOf } from '@/lib/price/list/lineList';
import { type Selling, sellingTotal } from '@/lib/price/list/selling';
import { priceLine } from '@/lib/price/priceTable';
import { daysBetween } from '@/shared/days';
import { type Finding, isStanding } from '@/shared/finding';
import type { MinorUnits } from '@/shared/money';
import type { FrozenItem } from '@/shared/schemas/priceList';
import type { JobInput } from '@/shared/schemas/request';
import { thresholds } from '@/shared/tables/thresholds';
import { anyDay } from './anyDay';
import type { TaxMode } from './freezeItem';
import { frozenRates } from './frozenRates';
import { leastMargins } from './leastMargins';
import { lookedAt } from './lookedAt';
import { leavesEnough, type MovedRate, movedRates } from './movedRates';

/** An issued item, with the terms of the version it stands in. */
export interface IssuedItem {
  readonly item: FrozenItem;
  readonly currency: string;
  readonly taxMode: TaxMode;
}

/** A listed price that leaves less than it did. */
export interface WornPrice {
  readonly from: number;
  readonly to: number | null;
  /** The size and quantity of the break that earn least today. */
  readonly size: string;
  readonly at: number;
  /** What that many pay by the list, and what they would pay by one made today, whole minor units. */
  readonly listed: MinorUnits;
  readonly today: MinorUnits;
  readonly marginThen: number;
  readonly marginNow: number;
}

interface AgedRate {
  readonly label: string;
  readonly days: number;
}

export type ItemState =
  | {
      readonly kind: 'compared';
      readonly worn: readonly WornPrice[];
      readonly moved: readonly MovedRate[];
      /** Rates that nobody has looked at for longer than prices are trusted. */
      readonly aged: readonly AgedRate[];
      /** Sizes that are listed and that the job no longer has. */
      readonly goneSizes: readonly string[];
    }
  /** The line is no longer in its job. */
  | { readonly kind: 'noLine' }
  /** Money or tax is written in another way than the list has it. */
  | { readonly kind: 'otherTerms' }
  | { readonly kind: 'stopped'; readonly why: Finding | null };

/**
 * Holds an issued item against today's rates: what the list says goes through the grid at the quantities that earn
 * least. A price holds while it leaves what it was made for, or what it left when it was issued, whichever is less.
 */
export function compareItem(asked: JobInput, grid: Grid, { item, currency, taxMode }: IssuedItem): ItemState {
  const input = anyDay(asked);
  const costed = costInput(input, grid);
  if (costed === null) return { kind: 'stopped', why: checkJob(input).findings.find(isStanding) ?? null };
  const { job } = costed.laidOut;
  const line = job.lines.find((one) => one.line.id === item.lineId);
  if (line === undefined) return { kind: 'noLine' };
  if (job.workshop.currency !== currency || job.channel.taxMode !== taxMode) return { kind: 'otherTerms' };
  const rates = frozenRates(input, line.line.blankId);
  return {
    kind: 'compared',
    worn: wornPrices(costed, line, grid, item),
    moved: movedRates(item.rates, rates),
    aged: rates.flatMap(({ label, date, isTypical }): readonly AgedRate[] => {
      const days = daysBetween(date, input.asOf);
      return isTypical || days <= thresholds.rateAge.note.value ? [] : [{ label, days }];
    }),
    goneSizes: item.sizes.flatMap(({ size }) => (line.sizes.some((one) => one.size === size) ? [] : [size])),
  };
}

// Helpers

function wornPrices(
  costed: CostedJob,
  line: ResolvedLine,
  grid: Grid,
  item: FrozenItem,
): readonly WornPrice[] {
  const { currency } = costed.laidOut.job.workshop;
  const { table, suggested } = priceLine(costed, line, grid);
  const upCharge = new Map(item.sizes.map((one) => [one.size, one.upCharge]));
  const sold = line.sizes.flatMap((size) => {
    const charge = upCharge.get(size.size);
    const selling = charge === undefined ? null : soldAsListed(item, charge, currency);
    return selling === null ? [] : [{ size, selling }];
  });
  const least = leastMargins(
    item.breaks.map(({ from, to, leastAt }) => ({
      from,
      to,
      looked: [...lookedAt({ from, to, rule: item.selling }, table), leastAt],
    })),
    sold,
    currency,
    caseEvaluator(judgedJob(costed, line), line, grid),
  );
  return item.breaks.flatMap(({ from, to, leastMargin }, index): readonly WornPrice[] => {
    const found = least[index];
    if (found == null || leavesEnough(found.margin, leastMargin, item.targetMargin)) return [];
    const more = suggested.sizes.find(({ size }) => size === found.size)?.more ?? (0 as MinorUnits);
    const selling = sellingOf(suggested, more, currency);
    const today = selling.ok ? sellingTotal(selling.value, found.at) : null;
    return [
      {
        from,
        to,
        size: found.size,
        at: found.at,
        listed: found.total,
        today: today ?? found.total,
        marginThen: leastMargin,
        marginNow: found.margin,
      },
    ];
  });
}

/** The rule of an issued item for a size that adds so much. A cap of an older list acted on the price of the size. */
function soldAsListed(item: FrozenItem, charge: number, currency: string): Selling | null {
  const inside = item.capOn === 'size' && item.setUp === null ? charge : 0;
  const breaks = item.breaks.map(({ from, each }) => ({ from, each: (each + inside) as MinorUnits }));
  const selling = sellingOf(
    {
      rule: item.setUp === null && item.selling === 'setUpApart' ? 'asListed' : item.selling,
      start: (item.setUp?.start ?? 0) as MinorUnits,
      breaks:
        item.setUp === null
          ? breaks
          : [{ from: item.breaks[0]?.from ?? 1, each: item.setUp.each as MinorUnits }],
    },
    (charge - inside) as MinorUnits,
    currency,
  );
  return selling.ok ? selling.value : null;
}
