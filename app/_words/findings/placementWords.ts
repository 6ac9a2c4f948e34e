import type { PlacementFacts } from '@/shared/facts/placementFacts';
import { pressFitWords } from './pressFitWords';
import { type WordingsOf, wording } from './wording';

/** Finished dye turns to gas again near here: common practice, 350 °F. */
const DYE_WAKES_C = 176.7;

/** Words of the findings about placements and presses. */
export const placementWords = {
  ...pressFitWords,
  'PLC-01': ({ variant, facts }, formatter) => {
    const sentence = `${facts.placement} at ${formatter.size(facts.widthMm, facts.heightMm)} is ${variant === 'over' ? 'too large' : 'close to the largest print'} for ${facts.sizes}.`;
    const most = formatter.size(facts.mostWidthMm, facts.mostHeightMm);
    return variant === 'over'
      ? wording(
          sentence,
          `The largest print there is ${most}; more runs over seams and hems. Use a smaller print for these sizes.`,
        )
      : wording(
          sentence,
          `The largest print there is ${most}: a crooked shirt or a wide seam leaves no room. A slightly smaller print is easier to place.`,
        );
  },
  'PLC-02': ({ variant, facts }, formatter) => {
    switch (variant) {
      case 'wide':
        return wording(
          `${facts.placement} covers ${formatter.share(facts.share)} of the width of size ${facts.size}.`,
          `It wraps towards the armpits on ${facts.smallest}. A second, smaller print for the small sizes looks better and adds a sheet set-up.`,
        );
      case 'tiny':
        return wording(
          `${facts.placement} covers ${formatter.share(facts.share)} of the width of size ${facts.size}.`,
          `It looks lost on ${facts.largest}. A second, larger print for the large sizes looks better and adds a sheet set-up.`,
        );
      default:
        return wording(
          `${facts.placement} is one size for all, from ${facts.smallest} to ${facts.largest}.`,
          'It wraps round the smallest and looks lost on the largest. Two print sizes look better and add a sheet set-up.',
        );
    }
  },
  'PLC-05': ({ variant, facts }, formatter) => {
    const platen = formatter.size(facts.platenWidthMm, facts.platenHeightMm);
    const sentence = `${facts.placement} at ${formatter.size(facts.widthMm, facts.heightMm)} ${variant === 'over' ? 'is larger than' : 'comes close to the edge of'} the platen of ${facts.press} (${platen}).`;
    return variant === 'over'
      ? wording(
          sentence,
          'Two presses side by side leave a visible band where they meet. Use a smaller print or a larger press.',
        )
      : wording(
          sentence,
          `The outer ${formatter.length(facts.edgeMm)} of a platen runs cooler, so the edge of the picture may be pale. Use a smaller print, or test the edges.`,
        );
  },
  'PLC-07': ({ variant, facts }, formatter) => {
    const each = facts.each
      .split(';')
      .map((share) => formatter.share(Number(share)))
      .join(' and ');
    const sentence = `${facts.line} is pressed ${formatter.number(facts.presses, 0)} times: losses of ${each} come to ${formatter.share(facts.lost)} of the pieces.`;
    return variant === 'order'
      ? wording(
          sentence,
          `A piece spoiled late has had the earlier presses for nothing. Pressing ${facts.first} first saves ${formatter.money(facts.saving)} on this job.`,
        )
      : wording(
          sentence,
          `${facts.first} goes first, and no other order costs less. The losses are in the price as normal spoilage.`,
        );
  },
  'PLC-08': ({ facts }, formatter) =>
    wording(
      `${facts.finished} is heated again while ${facts.placement} is pressed, with no clean paper between.`,
      `From about ${formatter.temperature(DYE_WAKES_C)} the finished dye wakes up and prints a ghost. Put clean paper inside and under the piece, and do not slide it.`,
    ),
} satisfies WordingsOf<PlacementFacts>;
