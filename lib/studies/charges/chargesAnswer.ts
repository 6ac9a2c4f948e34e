import { calendarOf } from '@/lib/calendar/calendar';
import { minuteOf } from '@/lib/calendar/minutes';
import { planWork } from '@/lib/calendar/planWork';
import { benchWorkOf } from '@/lib/costing/benchWorkOf';
import { costInput } from '@/lib/costing/costInput';
import type { CostedJob } from '@/lib/grid/costJob';
import { wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { piecesOf } from '@/lib/grid/fillLine';
import { judgedJob } from '@/lib/price/list/judgedJob';
import { priceLine } from '@/lib/price/priceTable';
import { taxInside } from '@/lib/price/taxInside';
import type { MinorUnits } from '@/shared/money';
import type { JobInput } from '@/shared/schemas/request';
import { type ArtWork, artMinutes } from './artMinutes';
import { designCharge } from './designCharge';
import { type Extra, extraCharge } from './extraCharge';
import { type FirstOrder, minimumOrder } from './minimumOrder';
import { placementCharge } from './placementCharge';
import { type RushOfDay, rushFor } from './rushFor';
import { sampleCharge } from './sampleCharge';

/**
 * Whether the job's price pays for it already. Where it does, what the target price is with it, and without it once it
 * is charged apart: a piece of a job of one line, the order where there are several; as the channel writes prices,
 * unrounded.
 */
export type Borne =
  | { readonly kind: 'apart' }
  | {
      readonly kind: 'inPrice';
      readonly per: 'piece' | 'order';
      readonly withIt: number;
      readonly withoutIt: number;
    };

/** A charge around the piece: what it costs the maker, unrounded, and what to write, in whole minor units. */
export type Charge = {
  readonly cost: number;
  readonly written: MinorUnits;
  readonly borne: Borne;
} & (
  | { readonly id: 'minimumOrder'; readonly covers: number; readonly paidByList: FirstOrder | null }
  | { readonly id: 'design'; readonly name: string; readonly art: ArtWork }
  /** `line` is null in a job of one line. */
  | { readonly id: 'sample'; readonly line: string | null; readonly size: string }
  /** A piece of its line. */
  | { readonly id: 'placement'; readonly line: string; readonly name: string }
  /** Each time; `finishing` are the minutes of a piece that its price bears. */
  | { readonly id: 'fold'; readonly finishing: number }
  | { readonly id: 'name' | 'split' | 'change' }
  /** Once an order that is brought. */
  | { readonly id: 'delivery' }
);

const apart: Borne = { kind: 'apart' };

export interface ChargesAnswer {
  readonly currency: string;
  readonly charges: readonly Charge[];
  /** Null where nobody has said when the job is wanted. */
  readonly rush: RushOfDay | null;
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
      ...samples(costed, grid),
      ...furtherPlacements(costed, grid),
      ...extras(costed, grid),
      ...delivery(costed, grid),
    ],
    rush: rushOf(costed),
  };
}

function leastOrder(costed: CostedJob, grid: Grid): readonly Charge[] {
  const { workshop, lines } = costed.laidOut.job;
  const [line] = lines;
  if (line === undefined) return [];
  const { list } = priceLine(costed, line, grid);
  const found = minimumOrder(judgedJob(costed, line), grid, workshop.policy.charges.minimumProfit, list);
  if (!found.ok) return [];
  const { fullCost, written, covers, paidByList } = found.value;
  return [{ id: 'minimumOrder', cost: fullCost, written, borne: apart, covers, paidByList }];
}

function designs(costed: CostedJob, grid: Grid): readonly Charge[] {
  const { job } = costed.laidOut;
  const { artMinutesIncluded } = job.workshop.policy.charges;
  const placed = job.lines.flatMap(({ placements }) => placements);
  const each = new Map(placed.map((one) => [one.placement.artworkId, one]));
  return [...each].flatMap(([artworkId, { artwork, prepMinutes, isArtReady }]): readonly Charge[] => {
    const found = designCharge(costed, grid, artworkId);
    if (!found.ok) return [];
    const { cost, exact, written } = found.value;
    const hourly = job.rates.wage.value + (costed.sheet.jobValues.overheadRate ?? 0);
    const art = artMinutes(isArtReady ? 0 : prepMinutes.value, artMinutesIncluded, hourly);
    return [{ id: 'design', name: artwork.name, art, cost, written, borne: inPrice(costed, exact) }];
  });
}

/** What the target price is with and without a part of it, currency units of the whole order without tax. */
function inPrice({ laidOut, sheet }: CostedJob, part: number): Borne {
  const { job } = laidOut;
  const isOne = job.lines.length === 1;
  const pieces = isOne ? job.lines.reduce((sum, line) => sum + piecesOf(line), 0) : 1;
  const target = wholeJob(sheet, 'target');
  const shown = (total: number) => (total * (1 + taxInside(job))) / pieces;
  return {
    kind: 'inPrice',
    per: isOne ? 'piece' : 'order',
    withIt: shown(target),
    withoutIt: shown(target - part),
  };
}

function samples(costed: CostedJob, grid: Grid): readonly Charge[] {
  const { lines } = costed.laidOut.job;
  return lines.flatMap(({ line }): readonly Charge[] => {
    const found = sampleCharge(costed, grid, line.id);
    if (found === null) return [];
    const { cost, written, size } = found;
    return [{ id: 'sample', line: lines.length === 1 ? null : line.name, size, cost, written, borne: apart }];
  });
}

/** The first print is what the piece is sold for; every further one is a charge. */
function furtherPlacements(costed: CostedJob, grid: Grid): readonly Charge[] {
  return costed.laidOut.job.lines.flatMap((resolved) => {
    const { line, placements } = resolved;
    if (placements.length < 2) return [];
    return placements.flatMap(({ placement }): readonly Charge[] => {
      const found = placementCharge(costed, grid, line.id, placement.id);
      if (!found.ok) return [];
      const { costEach, targetEach, written } = found.value;
      const borne = inPrice(costed, targetEach * piecesOf(resolved));
      return [{ id: 'placement', line: line.name, name: placement.name, cost: costEach, written, borne }];
    });
  });
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
    if (!found.ok) return [];
    const { cost, written } = found.value;
    if (id !== 'fold') return [{ id, cost, written, borne: apart }];
    const finishing = costed.laidOut.job.lines[0]?.finishMinutes.value ?? 0;
    return [{ id, cost, written, borne: apart, finishing }];
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
  if (!found.ok) return [];
  const { cost, target, written } = found.value;
  return [{ id: 'delivery', cost, written, borne: inPrice(costed, target) }];
}

function rushOf(costed: CostedJob): ChargesAnswer['rush'] {
  const { job } = costed.laidOut;
  const { wantedOn } = job.job;
  if (wantedOn === null) return null;
  const calendar = calendarOf(job.workshop);
  const planned = calendar && planWork(calendar, [benchWorkOf(costed)], minuteOf(job.asOf));
  return rushFor(job.asOf, wantedOn, planned, job.workshop.policy.charges);
}
