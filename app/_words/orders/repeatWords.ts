import type { Formatter } from '@/app/_words/formatter';
import type { repeatOrder } from '@/lib/orders/repeat/repeatOrder';

type Repeated = ReturnType<typeof repeatOrder>;

/** @returns what of a repeat need not be done or paid again. */
export function freeWords({ jobs, freeCharges }: Repeated, formatter: Formatter): readonly string[] {
  const pictures = jobs.reduce((sum, { readyPlacements }) => sum + readyPlacements.length, 0);
  const prints = jobs.reduce(
    (sum, { job }) => sum + job.lines.reduce((total, { placements }) => total + placements.length, 0),
    0,
  );
  const proofs = jobs.filter(({ isProofFree }) => isProofFree).length;
  return [
    ...(pictures === 0
      ? []
      : [
          pictures === prints
            ? 'All pictures are prepared, and their tests are made.'
            : `${formatter.count(pictures, 'picture')} of ${formatter.number(prints)} ${pictures === 1 ? 'is' : 'are'} prepared and tested.`,
        ]),
    ...(proofs === 0
      ? []
      : [
          proofs === jobs.length
            ? 'The proof was approved as it is today.'
            : 'A part of the proof was approved as it is today.',
        ]),
    ...(freeCharges.length === 0
      ? []
      : [`Not charged again: ${freeCharges.map(({ what }) => what).join(', ')}.`]),
  ];
}

/** @returns what was of the last order alone, or is not here any more. */
export function leftOutOfRepeat({ missingJobs, leftOut }: Repeated, formatter: Formatter): readonly string[] {
  const parts = [
    leftOut.discount && 'the discount',
    leftOut.agreed && 'what was agreed beside the terms',
    leftOut.names > 0 && formatter.count(leftOut.names, 'name'),
    leftOut.fromLists > 0 && 'prices of a price list',
    leftOut.waivers > 0 && formatter.count(leftOut.waivers, 'passed stop'),
    ...leftOut.otherCharges.map(({ what }) => what),
  ].filter((part) => part !== false);
  return [
    ...(parts.length === 0 ? [] : [`Left out, as it was of that order alone: ${parts.join(', ')}.`]),
    ...(missingJobs.length === 0
      ? []
      : [
          `${formatter.count(missingJobs.length, 'job')} of it ${missingJobs.length === 1 ? 'is' : 'are'} not here any more. Add what is missing in the new order.`,
        ]),
  ];
}

export const NOT_TAKEN_REPEAT = 'It could not be made, and nothing was changed. Press again.';
