import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import type { JobInput } from '@/shared/schemas/request';
import type { Lever, LeverDraft } from './lever';
import { minuteLevers } from './minuteLevers';
import { orderLevers } from './orderLevers';
import { printLevers } from './printLevers';
import { purchaseLevers } from './purchaseLevers';
import { figuresOf, stopsOf, tryChanges } from './tryChanges';

export type LeverAim = 'margin' | 'payPerHour';

/** Gains below this are noise. */
const NOISE = 1e-9;

/**
 * The single changes that would leave more of a job, each tried on the job itself: what a lever promises is what
 * happens when it is taken. Changes that bring up a stop are left out, and so are those that gain nothing.
 *
 * @param input the documents the job was costed from, with a price for every line: a change keeps it
 * @param aim what is to grow; the biggest gain comes first, then the biggest saving
 */
export function levers(
  input: JobInput,
  costed: CostedJob,
  grid: Grid,
  aim: LeverAim = 'margin',
): readonly Lever[] {
  const before = figuresOf(costed);
  const known = new Set(stopsOf(costed, grid));
  return draftsOf(input, costed, grid)
    .flatMap((draft): readonly Lever[] => {
      const after = tryChanges(input, draft.changes, known, grid);
      if (after === null) return [];
      const gain = {
        margin: after.margin - before.margin,
        payPerHour: after.payPerHour - before.payPerHour,
        profit: after.profit - before.profit,
        savingEach: before.fullCostEach - after.fullCostEach,
      };
      const isGain = gain[aim] > NOISE || (Math.abs(gain[aim]) <= NOISE && gain.savingEach > NOISE);
      return isGain ? [{ ...draft, after, gain }] : [];
    })
    .sort((a, b) => {
      const apart = b.gain[aim] - a.gain[aim];
      return Math.abs(apart) > NOISE ? apart : b.gain.savingEach - a.gain.savingEach;
    });
}

/** @returns the changes worth trying on a job. */
const draftsOf = (input: JobInput, costed: CostedJob, grid: Grid): readonly LeverDraft[] => [
  ...printLevers(costed, grid),
  ...orderLevers(costed, grid),
  ...minuteLevers(costed),
  ...purchaseLevers(input, costed),
];
