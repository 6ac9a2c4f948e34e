import { type Say, saying } from './sayings';

/** Finished dye turns to gas again near here: common practice, 350 °F. */
const DYE_WAKES_C = 176.7;

/** Words of the findings about placements and presses. */
export const placementWords = {
  'PLC-01': ({ finding, name, figure, formatter }) => {
    const sentence = `${name('placement')} at ${formatter.size(figure('widthMm'), figure('heightMm'))} is ${finding.variant === 'over' ? 'too large' : 'close to the largest print'} for ${name('sizes')}.`;
    const most = formatter.size(figure('mostWidthMm'), figure('mostHeightMm'));
    return finding.variant === 'over'
      ? saying(
          sentence,
          `The largest print there is ${most}; more runs over seams and hems. Use a smaller print for these sizes.`,
        )
      : saying(
          sentence,
          `The largest print there is ${most}: a crooked shirt or a wide seam leaves no room. A slightly smaller print is easier to place.`,
        );
  },
  'PLC-02': ({ finding, name, figure, formatter }) => {
    const share = formatter.share(figure('share'));
    switch (finding.variant) {
      case 'wide':
        return saying(
          `${name('placement')} covers ${share} of the width of size ${name('size')}.`,
          `It wraps towards the armpits on ${name('smallest')}. A second, smaller print for the small sizes looks better and adds a sheet set-up.`,
        );
      case 'tiny':
        return saying(
          `${name('placement')} covers ${share} of the width of size ${name('size')}.`,
          `It looks lost on ${name('largest')}. A second, larger print for the large sizes looks better and adds a sheet set-up.`,
        );
      default:
        return saying(
          `${name('placement')} is one size for all, from ${name('smallest')} to ${name('largest')}.`,
          'It wraps round the smallest and looks lost on the largest. Two print sizes look better and add a sheet set-up.',
        );
    }
  },
  'PLC-05': ({ finding, name, figure, formatter }) => {
    if (finding.variant === 'kind') {
      return saying(
        `${name('press')} is no press for ${name('blank')}.`,
        'A flat platen cannot reach round a curve, and a wrap-round press or an oven cannot hold cloth or a flat panel even. Choose another press for this placement.',
      );
    }
    const platen = formatter.size(figure('platenWidthMm'), figure('platenHeightMm'));
    const sentence = `${name('placement')} at ${formatter.size(figure('widthMm'), figure('heightMm'))} ${finding.variant === 'over' ? 'is larger than' : 'comes close to the edge of'} the platen of ${name('press')} (${platen}).`;
    return finding.variant === 'over'
      ? saying(
          sentence,
          'Two presses side by side leave a visible band where they meet. Use a smaller print or a larger press.',
        )
      : saying(
          sentence,
          `The outer ${formatter.length(figure('edgeMm'))} of a platen runs cooler, so the edge of the picture may be pale. Use a smaller print, or test the edges.`,
        );
  },
  'PLC-07': ({ finding, name, figure, formatter }) => {
    const each = name('each')
      .split(';')
      .map((share) => formatter.share(Number(share)))
      .join(' and ');
    const sentence = `${name('line')} is pressed ${formatter.number(figure('presses'), 0)} times: losses of ${each} come to ${formatter.share(figure('lost'))} of the pieces.`;
    return finding.variant === 'order'
      ? saying(
          sentence,
          `A piece spoiled late has had the earlier presses for nothing. Pressing ${name('first')} first saves ${formatter.money(figure('saving'))} on this job.`,
        )
      : saying(
          sentence,
          `${name('first')} goes first, and no other order costs less. The losses are in the price as normal spoilage.`,
        );
  },
  'PLC-08': ({ name, formatter }) =>
    saying(
      `${name('finished')} is heated again while ${name('placement')} is pressed, with no clean paper between.`,
      `From about ${formatter.temperature(DYE_WAKES_C)} the finished dye wakes up and prints a ghost. Put clean paper inside and under the piece, and do not slide it.`,
    ),
} satisfies Record<string, Say>;
