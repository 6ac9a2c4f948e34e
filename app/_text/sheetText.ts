import { type Say, saying } from './sayings';

/** Words of the findings about sheets. */
export const sheetText = {
  'LAY-01': ({ finding, name, figure, speak }) => {
    if (finding.variant === 'speck') {
      return saying(
        `${name('placement')} is ${speak.size(figure('widthMm'), figure('heightMm'))}.`,
        `A print under ${speak.length(figure('leastMm'))} can be neither cut nor taped; most likely the unit slipped. Check its width and height.`,
      );
    }
    return saying(
      `${name('placement')} at ${speak.size(figure('widthMm'), figure('heightMm'))} does not fit ${name('sheet')}, either way round.`,
      `The printer reaches ${speak.size(figure('printableWidthMm'), figure('printableHeightMm'))} of the sheet. The largest print of this shape with room for tape is ${speak.size(figure('largestWidthMm'), figure('largestHeightMm'))}. Print it at that size, or on a larger sheet.`,
    );
  },
  'LAY-02': ({ name, figure, speak }) =>
    saying(
      `${name('placement')} at ${speak.size(figure('widthMm'), figure('heightMm'))} fits ${name('sheet')} only when turned.`,
      'Turn the picture by 90° before sending it, and mark which way the sheet is fed.',
    ),
  'LAY-03': ({ finding, name, figure, speak }) => {
    const sentence = `${name('placement')} at ${speak.size(figure('widthMm'), figure('heightMm'))} fits ${name('sheet')} only without borders.`;
    const largest = speak.size(figure('largestWidthMm'), figure('largestHeightMm'));
    return finding.variant === 'unsupported'
      ? saying(
          sentence,
          `This printer leaves a border of its own, so the edge of the picture would be missing. Print it at ${largest}, or on a larger sheet.`,
        )
      : saying(
          sentence,
          `Borderless printing enlarges a picture by one to three per cent and leaves no dry edge for tape. Measure a test print, or print it at ${largest}.`,
        );
  },
  'LAY-04': ({ finding, name, figure, speak }) => {
    const sentence = `${name('placement')} leaves ${speak.length(figure('marginMm'))} of clean paper to the edge of the sheet.`;
    return finding.variant === 'none'
      ? saying(
          sentence,
          `There is nowhere to tape, and a transfer that shifts on a garment prints double. Leave ${speak.length(figure('wantedMm'))} on every side.`,
        )
      : saying(
          sentence,
          `Tape would lie on the picture. Leave ${speak.length(figure('wantedMm'))} on every side, or tape with great care.`,
        );
  },
  'LAY-06': ({ finding, name, figure, speak }) => {
    const sentence = `Pieces that share a sheet, such as ${name('placement')}, lie ${speak.length(figure('gutterMm'))} apart.`;
    const wanted = speak.length(figure('wantedMm'));
    return finding.variant === 'none'
      ? saying(
          sentence,
          `No knife goes through there without cutting a picture. Leave ${wanted} between pieces.`,
        )
      : saying(
          sentence,
          `Cutting by hand is tight there, and little is left for tape. Leave ${wanted} between pieces.`,
        );
  },
  'LAY-08': ({ name, figure, speak }) =>
    saying(
      `The last sheet of ${name('placement')} has ${speak.count(figure('spare'), 'free place')}.`,
      `${speak.count(figure('sheets'), 'sheet')} of ${speak.number(figure('perSheet'), 0)} carry ${speak.number(figure('full'), 0)} for ${speak.count(figure('pieces'), 'piece')}. Print spares in the free places: they cost no paper.`,
    ),
} satisfies Record<string, Say>;
