import { hoursBetween } from '@/lib/check/time/benchCalendar';
import { costInput } from '@/lib/costing/costInput';
import type { CostedJob } from '@/lib/grid/costJob';
import { wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { breakList } from '@/lib/price/list/breakList';
import { priceTable } from '@/lib/price/priceTable';
import { workingDaysBetween } from '@/shared/days';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { JobInput } from '@/shared/schemas/request';
import { type ArtWork, artMinutes } from './artMinutes';
import { designCharge } from './designCharge';
import { type Extra, extraCharge } from './extraCharge';
import { minimumOrder } from './minimumOrder';
import { placementCharge } from './placementCharge';
import { type Rush, rushShare } from './rushShare';
import { sampleCharge } from './sampleCharge';

/** A charge around the piece: what it costs the maker, unrounded, and what to write, in whole minor units. */
export type Charge = { readonly cost: number; readonly written: MinorUnits } & (
  | { readonly id: 'minimumOrder'; readonly covers: number }
  | { readonly id: 'design'; readonly name: string; readonly art: ArtWork }
  | { readonly id: 'sample' }
  /** A piece of its line. */
  | { readonly id: 'placement'; readonly line: string; readonly name: string }
  /** Each time. */
  | { readonly id: 'name' | 'fold' | 'split' | 'change' }
  /** Once an order that is brought; its cost stands among those of the job already. */
  | { readonly id: 'delivery' }
);

export interface ChargesAnswer {
  readonly currency: string;
  readonly charges: readonly Charge[];
  /** Null where nobody has said when the job is wanted. */
  readonly rush: { readonly outcome: Rush; readonly wantedDays: number; readonly normalDays: number } | null;
}

/** @returns what to charge around the pieces of a job; null while it cannot be costed. */
export function chargesAnswer(input: JobInput, grid: Grid): ChargesAnswer | null {
  const costed = costInput(input, grid);
  if (costed === null) return null;
  return {
    currency: input.workshop.currency,
    charges: [
      ...leastOrder(costed, grid),
      ...designs(costed, grid),
      ...sample(costed, grid),
      ...furtherPlacements(costed, grid),
      ...extras(costed, grid),
      ...delivery(costed, grid),
    ],
    rush: rushOf(costed),
  };
}

function leastOrder(costed: CostedJob, grid: Grid): readonly Charge[] {
  const { workshop } = costed.laidOut.job;
  const [first, ...others] = priceTable(costed, grid);
  if (first === undefined) return [];
  const own = [first, ...others].filter(({ lineId, size }) => lineId === first.lineId && size === first.size);
  const list = breakList(
    own.map(({ from, price }) => ({ from, each: fromMinor(price, workshop.currency) })),
    workshop.currency,
  );
  if (!list.ok) return [];
  const found = minimumOrder(costed, grid, workshop.policy.charges.minimumProfit, list.value);
  if (!found.ok) return [];
  const { fullCost, written, covers } = found.value;
  return [{ id: 'minimumOrder', cost: fullCost, written, covers }];
}

function designs(costed: CostedJob, grid: Grid): readonly Charge[] {
  const { job } = costed.laidOut;
  const { artMinutesIncluded } = job.workshop.policy.charges;
  const placed = job.lines.flatMap(({ placements }) => placements);
  const each = new Map(placed.map((one) => [one.placement.artworkId, one]));
  return [...each].flatMap(([artworkId, { artwork, prepMinutes }]): readonly Charge[] => {
    const found = designCharge(costed, grid, artworkId);
    if (!found.ok) return [];
    const hourly = job.rates.wage.value + (costed.sheet.jobValues.overheadRate ?? 0);
    const art = artMinutes(prepMinutes.value, artMinutesIncluded, hourly);
    return [{ id: 'design', name: artwork.name, art, cost: found.value.cost, written: found.value.written }];
  });
}

function sample(costed: CostedJob, grid: Grid): readonly Charge[] {
  const found = sampleCharge(costed, grid);
  return found === null ? [] : [{ id: 'sample', cost: found.cost, written: found.written }];
}

/** The first print is what the piece is sold for; every further one is a charge. */
function furtherPlacements(costed: CostedJob, grid: Grid): readonly Charge[] {
  return costed.laidOut.job.lines.flatMap(({ line, placements }) =>
    placements.length < 2
      ? []
      : placements.flatMap(({ placement }): readonly Charge[] => {
          const found = placementCharge(costed, grid, line.id, placement.id);
          return found.ok
            ? [
                {
                  id: 'placement',
                  line: line.name,
                  name: placement.name,
                  cost: found.value.costEach,
                  written: found.value.written,
                },
              ]
            : [];
        }),
  );
}

function extras(costed: CostedJob, grid: Grid): readonly Charge[] {
  const { nameMinutes, foldMinutes, splitMinutes, changeMinutes, changeAtLeast } =
    costed.laidOut.job.workshop.policy.charges;
  const nothing = { sheets: 0, cash: 0, atLeast: 0 };
  const wanted: Readonly<Record<'name' | 'fold' | 'split' | 'change', Extra>> = {
    // A name has no neighbours to share a sheet with.
    name: { ...nothing, minutes: nameMinutes, sheets: 1 },
    fold: { ...nothing, minutes: foldMinutes },
    split: { ...nothing, minutes: splitMinutes },
    change: { ...nothing, minutes: changeMinutes, atLeast: changeAtLeast },
  };
  return (['name', 'fold', 'split', 'change'] as const).flatMap((id): readonly Charge[] => {
    const found = extraCharge(costed, grid, wanted[id]);
    return found.ok ? [{ id, cost: found.value.cost, written: found.value.written }] : [];
  });
}

/** The way and its minutes, for an order that is brought. */
function delivery(costed: CostedJob, grid: Grid): readonly Charge[] {
  const { job } = costed.laidOut;
  if (job.job.madeFor !== 'order' || job.job.deliveryKm === null) return [];
  const found = extraCharge(costed, grid, {
    minutes: job.rates.deliverMinutes.value,
    sheets: 0,
    cash: wholeJob(costed.sheet, 'delivery'),
    atLeast: 0,
  });
  return found.ok ? [{ id: 'delivery', cost: found.value.cost, written: found.value.written }] : [];
}

function rushOf({ laidOut, sheet }: CostedJob): ChargesAnswer['rush'] {
  const { job } = laidOut;
  const { wantedOn } = job.job;
  if (wantedOn === null) return null;
  const { normalWorkingDays, rushShares } = job.workshop.policy.charges;
  const wantedDays = Math.max(0, workingDaysBetween(job.asOf, wantedOn));
  const needed = wholeJob(sheet, 'benchTime') / 60;
  const free = job.workshop.freeHours;
  const hasCapacity = free === null || hoursBetween(free, job.asOf, wantedOn) >= needed;
  return {
    outcome: rushShare(wantedDays, normalWorkingDays, hasCapacity, rushShares),
    wantedDays,
    normalDays: normalWorkingDays,
  };
}
