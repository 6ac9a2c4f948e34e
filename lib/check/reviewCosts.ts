import { ownDearer } from '@/lib/check/prices/ownDearer';
import { ownPrices } from '@/lib/check/prices/ownPrices';
import { asItLies } from '@/lib/check/sheets/asItLies';
import { dutyRating } from '@/lib/check/time/dutyRating';
import { longRun } from '@/lib/check/time/longRun';
import { moreHeatings } from '@/lib/check/time/moreHeatings';
import { orderBlanksBy } from '@/lib/check/time/orderBlanksBy';
import { workLoad } from '@/lib/check/time/workLoad';
import { applyWaivers } from '@/lib/findings/applyWaivers';
import { makeFinding } from '@/lib/findings/makeFinding';
import { orderFindings } from '@/lib/findings/orderFindings';
import type { CheckedJob } from '@/lib/job/checkedJob';
import type { LinePlace } from '@/lib/job/places';
import { linePlaces, placementPlaces } from '@/lib/job/places';
import type { Finding, Fix } from '@/shared/finding';
import type { CostFacts } from './costFacts';

/**
 * The second look at a job, which needs its sums: paper left over, press order, price, time.
 *
 * @returns LAY-04, LAY-05 and LAY-10 of shared sheets, LAY-08, PLC-07, RATE-03, RATE-08, TIM-01, TIM-02, TIM-04 and ELE-04, waived ones with their reason, stops first
 */
export function reviewCosts(job: CheckedJob, facts: CostFacts): readonly Finding[] {
  const found = [
    ...asItLies(job, facts.lying),
    ...sparePlaces(job, facts),
    ...pressOrder(job, facts),
    ...priceFloors(job, facts),
    ...ownPrices(job, facts),
    ...ownDearer(job, facts),
    ...workLoad(job, facts),
    ...moreHeatings(job, facts),
    ...orderBlanksBy(job, facts),
    ...longRun(job, facts),
    ...dutyRating(job, facts),
  ];
  return orderFindings(applyWaivers(found, job.job.waivers));
}

/** LAY-08: the last sheet has places free. */
function sparePlaces(job: CheckedJob, facts: CostFacts): readonly Finding[] {
  return placementPlaces(job).flatMap((place) => {
    const { placement } = place.placed;
    return facts.placements.flatMap((count) => {
      const isHere = count.lineId === place.line.line.id && count.placementId === placement.id;
      if (!isHere || count.spare <= 0) return [];
      return [
        makeFinding({
          id: 'LAY-08',
          severity: 'note',
          ...(job.sheet.form === 'roll' ? ({ variant: 'strip' } as const) : {}),
          where: place.where('prints', count.print),
          found: { value: count.spare, unit: 'places' },
          facts: {
            placement: placement.name,
            perSheet: count.perSheet,
            pieces: count.pieces,
            sheets: count.sheets,
            spare: count.spare,
            full: count.pieces + count.spare,
          },
        }),
      ];
    });
  });
}

/** PLC-07: presses on one piece compound their losses, and their order decides what a late loss wastes. */
function pressOrder(job: CheckedJob, facts: CostFacts): readonly Finding[] {
  return linePlaces(job).flatMap((place): readonly Finding[] => {
    const { placements, line } = place.line;
    const [firstNow] = placements;
    if (firstNow === undefined || placements.length < 2) return [];
    const kept = placements.reduce((share, { scrap }) => share * (1 - scrap.value), 1);
    const order = facts.pressOrders.find(({ lineId }) => lineId === line.id);
    const better = reordered(place, order?.cheaperOrder ?? null);
    const first = better?.[0];
    const draft = {
      id: 'PLC-07',
      where: place.where('placements'),
      found: { value: 1 - kept, unit: 'share' },
    } as const;
    const losses = {
      line: line.name,
      presses: placements.length,
      lost: 1 - kept,
      each: placements.map(({ scrap }) => scrap.value).join(';'),
    };
    if (order === undefined || first === undefined) {
      const { name } = firstNow.placement;
      return [
        makeFinding({
          ...draft,
          severity: 'note',
          variant: 'compounded',
          facts: { ...losses, first: name },
        }),
      ];
    }
    return [
      makeFinding({
        ...draft,
        severity: 'caution',
        variant: 'order',
        facts: { ...losses, first: first.name, saving: order.saving },
        fix: {
          label: 'reorderPresses',
          facts: { first: first.name },
          changes: [place.change(['placements'], better)],
        },
      }),
    ];
  });
}

function reordered({ line }: LinePlace, order: readonly string[] | null) {
  if (order === null) return null;
  const all = line.placements.map(({ placement }) => placement);
  const better = order.flatMap((id) => all.find((placement) => placement.id === id) ?? []);
  return better.length === all.length ? better : null;
}

/** RATE-08: a size is sold for less than it takes out of the pocket, or less than it costs; told once a line. */
function priceFloors(job: CheckedJob, facts: CostFacts): readonly Finding[] {
  return linePlaces(job).flatMap((place): readonly Finding[] => {
    const { line } = place.line;
    const sold = facts.cases.flatMap((one) =>
      one.lineId === line.id && one.price !== null ? [{ ...one, price: one.price }] : [],
    );
    const underFloor = sold.filter(({ price, outOfPocketFloor }) => price < outOfPocketFloor - 1e-9);
    const underCost = sold.filter(({ price, fullCost }) => price < fullCost - 1e-9);
    const isBelowFloor = underFloor.length > 0;
    const cases = isBelowFloor ? underFloor : underCost;
    const limitOf = (one: (typeof sold)[number]) => (isBelowFloor ? one.outOfPocketFloor : one.fullCost);
    const [worst] = [...cases].sort((x, y) => limitOf(y) - y.price - (limitOf(x) - x.price));
    if (worst === undefined) return [];
    const lacking = {
      line: line.name,
      size: worst.size,
      others: cases
        .filter((one) => one !== worst)
        .map(({ size }) => size)
        .join(', '),
      price: worst.price,
      taxInside: job.channel.taxMode === 'inside',
      short: limitOf(worst) - worst.price,
    };
    return [
      makeFinding({
        id: 'RATE-08',
        severity: isBelowFloor ? 'stop' : 'caution',
        ...(isBelowFloor
          ? ({ variant: 'belowFloor', facts: { ...lacking, floor: worst.outOfPocketFloor } } as const)
          : ({
              variant: 'belowCost',
              facts: { ...lacking, cost: worst.fullCost, hasFees: worst.fees > 0 },
            } as const)),
        where: place.where('askedPrice'),
        found: { value: worst.price, unit: 'money/piece' },
        limit: { value: limitOf(worst), unit: 'money/piece' },
        fix: isBelowFloor ? askSuggested(place, sold, facts) : null,
      }),
    ];
  });
}

/** Asks what the sums suggest, where every size would then pay its bills: the maker's own list may lie too low as well. */
function askSuggested(
  place: LinePlace,
  sold: readonly CostFacts['cases'][number][],
  { suggested }: CostFacts,
): Fix | null {
  const ask = suggested.find(({ lineId }) => lineId === place.line.line.id);
  if (ask === undefined) return null;
  const { askedPrice, upCharges } = ask;
  const pays = sold.every(
    ({ size, outOfPocketFloor }) =>
      askedPrice + (upCharges.find((one) => one.size === size)?.amount ?? 0) >= outOfPocketFloor - 1e-9,
  );
  return pays
    ? {
        label: 'askSuggested',
        facts: { price: askedPrice },
        changes: [place.change(['askedPrice'], askedPrice), place.change(['upCharges'], upCharges)],
      }
    : null;
}
