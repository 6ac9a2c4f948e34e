import type { CostedJob } from '@/lib/grid/costJob';
import { type CostSheet, wholeJob } from '@/lib/grid/costSheet';
import { piecesOf } from '@/lib/grid/fillLine';
import { placementPlaces } from '@/lib/job/places';
import type { Change } from '@/shared/finding';
import type { Rate } from '@/shared/schemas/rate';
import type { LeverDraft } from './lever';
import { rateChange } from './rateChange';

/** The part of the largest time element that a better habit may save. */
const FEWER = 0.1;
/** A point of spoilage. */
const POINT = 0.01;

/** Changes of how the maker works: fewer minutes where most of them go, less spoiled where most is. */
export function minuteLevers(costed: CostedJob): readonly LeverDraft[] {
  return [...fewerMinutes(costed), ...lessScrap(costed)];
}

/** One element of the paid time of a job. */
interface Element {
  readonly element: string;
  /** Paid minutes of the whole job, without the allowance for rest. */
  readonly minutes: number;
  readonly rate: Rate;
  readonly where: Omit<Change, 'value'>;
}

function fewerMinutes(costed: CostedJob): readonly LeverDraft[] {
  const [largest] = [...elementsOf(costed)].sort((a, b) => b.minutes - a.minutes);
  if (largest === undefined || !(largest.minutes > 0)) return [];
  const value = tidy(largest.rate.value * (1 - FEWER));
  return [
    {
      id: 'fewerMinutes',
      facts: { element: largest.element, minutes: largest.minutes, from: largest.rate.value, to: value },
      changes: [rateChange(largest.where, largest.rate, value, costed.laidOut.job.asOf)],
    },
  ];
}

function elementsOf({ laidOut, sheet }: CostedJob): readonly Element[] {
  const { job } = laidOut;
  const sessions = wholeJob(sheet, 'sessions');
  const ofJob = (
    [
      ['enquiryMinutes', 1],
      ['proofMinutes', 1],
      ['packMinutes', 1],
      ['deliverMinutes', 1],
      ['setUpMinutes', sessions],
      ['cleanDownMinutes', sessions],
      ['sheetMinutes', wholeJob(sheet, 'sheets')],
    ] as const
  ).map(
    ([name, times]): Element => ({
      element: name,
      // As the grid was filled: an order that is not delivered has no minutes for it.
      minutes: (sheet.inputs.job[name]?.value ?? 0) * times,
      rate: job.rates[name],
      where: { document: 'job', path: ['rates', name] },
    }),
  );
  const blanks = new Map<string, Element>();
  for (const line of job.lines) {
    const before = blanks.get(line.line.blankId)?.minutes ?? 0;
    blanks.set(line.line.blankId, {
      element: line.blank.name,
      minutes: before + line.finishMinutes.value * piecesOf(line),
      rate: line.finishMinutes,
      where: { document: 'blank', id: line.line.blankId, path: ['finishMinutes'] },
    });
  }
  return [...ofJob, ...blanks.values(), ...placementElements(laidOut, sheet)];
}

function placementElements({ job }: CostedJob['laidOut'], sheet: CostSheet): readonly Element[] {
  const artworks = new Set<string>();
  return placementPlaces(job).flatMap((place): readonly Element[] => {
    const { placement, handMinutes, prepMinutes } = place.placed;
    const presses = sheet.cases.reduce(
      (sum, one, index) =>
        one.lineId === place.line.line.id
          ? sum + one.quantity * (sheet.values[`presses_${place.index + 1}`]?.[index] ?? 0)
          : sum,
      0,
    );
    const hand = {
      element: placement.name,
      minutes: presses * handMinutes.value,
      rate: handMinutes,
      where: { document: 'job', path: place.where('handMinutes').path } as const,
    };
    if (artworks.has(placement.artworkId)) return [hand];
    artworks.add(placement.artworkId);
    const prep: Element = {
      element: place.placed.artwork.name,
      minutes: prepMinutes.value,
      rate: prepMinutes,
      where: { document: 'artwork', id: placement.artworkId, path: ['prepMinutes'] },
    };
    return [hand, prep];
  });
}

function lessScrap({ laidOut }: CostedJob): readonly LeverDraft[] {
  const [worst] = [...placementPlaces(laidOut.job)].sort(
    (a, b) => b.placed.scrap.value - a.placed.scrap.value,
  );
  if (worst === undefined || worst.placed.scrap.value < POINT) return [];
  const { scrap, placement } = worst.placed;
  const value = tidy(scrap.value - POINT);
  const where = { document: 'job', path: worst.where('scrap').path } as const;
  return [
    {
      id: 'lessScrap',
      facts: { placement: placement.name, from: scrap.value, to: value },
      changes: [rateChange(where, scrap, value, laidOut.job.asOf)],
    },
  ];
}

/** Without the noise of subtracting. */
const tidy = (value: number): number => Number(value.toPrecision(12));
