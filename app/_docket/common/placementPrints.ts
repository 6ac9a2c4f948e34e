import { printOfSize } from '@/lib/job/printOfSize';
import type { Job, Print } from '@/shared/schemas/job';

/** A print size of a placement that at least one wanted size gets. */
export interface PrintOfPlacement {
  readonly print: Print;
  readonly index: number;
  readonly lineId: string;
  /** Place of the placement in press order, from 1. */
  readonly slot: number;
  readonly sizes: readonly string[];
}

/** @returns the prints of a placement with the sizes that get them; all of them where none is wanted yet. */
export function placementPrints(job: Job, placementId: string): readonly PrintOfPlacement[] {
  for (const line of job.lines) {
    const at = line.placements.findIndex(({ id }) => id === placementId);
    const placement = line.placements[at];
    if (placement === undefined) continue;
    const wanted = line.quantities.filter(({ quantity }) => quantity > 0).map(({ size }) => size);
    const all = placement.prints.map((print, index) => ({
      print,
      index,
      lineId: line.id,
      slot: at + 1,
      sizes: wanted.filter((size) => printOfSize(placement, size) === index),
    }));
    const used = all.filter(({ sizes }) => sizes.length > 0);
    return used.length === 0 ? all : used;
  }
  return [];
}
