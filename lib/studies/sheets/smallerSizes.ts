import { costInput } from '@/lib/costing/costInput';
import { changedInput } from '@/lib/findings/changedInput';
import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { type PlacementPlace, type PrintPlace, placementPlaces } from '@/lib/job/places';
import type { SizeMm } from '@/lib/job/tidyLength';
import { nextSize } from '@/lib/layout/nextSize';
import { plannedSheets } from '@/lib/layout/plannedSheets';
import type { Change } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';

/** A print a little smaller, of which more go on a sheet. */
export interface SmallerSize {
  readonly lineId: string;
  readonly placementId: string;
  readonly from: SizeMm;
  readonly to: SizeMm;
  readonly perSheetNow: number;
  readonly perSheet: number;
  /** Whole sheets the job then needs less. */
  readonly sheetsLess: number;
  /** What the whole job then costs less, in currency units, unrounded; above 0. */
  readonly saved: number;
  readonly changes: readonly Change[];
}

/**
 * Sizes close below those asked that save paper, each costed by the whole job with that one print changed. Prints
 * that share their sheets with others are left out: their sheets hold no grid.
 */
export function smallerSizes(input: JobInput, costed: CostedJob, grid: Grid): readonly SmallerSize[] {
  const { job, prints } = costed.laidOut;
  const now = plannedSheets(costed.laidOut).count;
  return placementPlaces(job).flatMap((place) =>
    place.prints.flatMap((printPlace): readonly SmallerSize[] => {
      const { line, placed } = place;
      const ids = { lineId: line.line.id, placementId: placed.placement.id };
      const isShared = prints.some(
        (one) => one.lineId === ids.lineId && one.placementId === ids.placementId && one.ganged !== undefined,
      );
      const size = isShared ? null : nextSize(job, printPlace.print);
      if (size === null) return [];
      const changes = sizeChanges(place, printPlace, size.to);
      const changed = changedInput(input, changes);
      const after = changed && costInput(changed, grid);
      if (after === null) return [];
      const saved = costed.sheet.fullCost - after.sheet.fullCost;
      const sheetsLess = now - plannedSheets(after.laidOut).count;
      if (!(saved > 0) || sheetsLess <= 0) return [];
      const { widthMm, heightMm } = printPlace.print;
      return [{ ...ids, from: { widthMm, heightMm }, ...size, sheetsLess, saved, changes }];
    }),
  );
}

function sizeChanges(
  { change }: PlacementPlace,
  { printIndex }: PrintPlace,
  size: SizeMm,
): readonly Change[] {
  return [
    change(['prints', printIndex, 'widthMm'], size.widthMm),
    change(['prints', printIndex, 'heightMm'], size.heightMm),
  ];
}
