import { type Say, saying } from './sayings';

/** Words of the findings about sheets. */
export const sheetWords = {
  'LAY-01': ({ finding, name, figure, formatter }) => {
    if (finding.variant === 'speck') {
      return saying(
        `${name('placement')} is ${formatter.size(figure('widthMm'), figure('heightMm'))}.`,
        `A print under ${formatter.length(figure('leastMm'))} can be neither cut nor taped; most likely the unit slipped. Check its width and height.`,
      );
    }
    return saying(
      `${name('placement')} at ${formatter.size(figure('widthMm'), figure('heightMm'))} does not fit ${name('sheet')}, either way round.`,
      `The printer reaches ${formatter.size(figure('printableWidthMm'), figure('printableHeightMm'))} of the sheet. The largest print of this shape with room for tape is ${formatter.size(figure('largestWidthMm'), figure('largestHeightMm'))}. Print it at that size, or on a larger sheet.`,
    );
  },
  'LAY-02': ({ name, figure, formatter }) =>
    saying(
      `${name('placement')} at ${formatter.size(figure('widthMm'), figure('heightMm'))} fits ${name('sheet')} only when turned.`,
      'Turn the picture by 90° before sending it, and mark which way the sheet is fed.',
    ),
  'LAY-03': ({ finding, name, figure, formatter }) => {
    const sentence = `${name('placement')} at ${formatter.size(figure('widthMm'), figure('heightMm'))} fits ${name('sheet')} only without borders.`;
    const largest = formatter.size(figure('largestWidthMm'), figure('largestHeightMm'));
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
  'LAY-04': ({ finding, name, figure, formatter }) => {
    const sentence = `${name('placement')} leaves ${formatter.length(figure('marginMm'))} of clean paper to the edge of the sheet.`;
    return finding.variant === 'none'
      ? saying(
          sentence,
          `There is nowhere to tape, and a transfer that shifts on a garment prints double. Leave ${formatter.length(figure('wantedMm'))} on every side.`,
        )
      : saying(
          sentence,
          `Tape would lie on the picture. Leave ${formatter.length(figure('wantedMm'))} on every side, or tape with great care.`,
        );
  },
  'LAY-05': ({ name, figure, formatter }) =>
    saying(
      `The edge of the paper lies ${formatter.length(figure('edgeMm'))} beside ${name('placement')}.`,
      `${name('blank')} keeps the line it presses. Tear the edge to a feather instead of cutting it, leave ${formatter.length(figure('wantedMm'))}, or use a press pillow.`,
    ),
  'LAY-06': ({ finding, name, figure, formatter }) => {
    const sentence = `Pieces that share a sheet, such as ${name('placement')}, lie ${formatter.length(figure('gutterMm'))} apart.`;
    const wanted = formatter.length(figure('wantedMm'));
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
  'LAY-07': ({ finding, name, figure, formatter }) =>
    saying(
      `${formatter.share(figure('empty'))} of each ${name('sheet')} stays empty beside ${name('placement')}.`,
      finding.variant === 'smaller'
        ? `At ${formatter.size(figure('widthMm'), figure('heightMm'))} a sheet carries ${formatter.number(figure('betterPerSheet'), 0)} instead of ${formatter.number(figure('perSheet'), 0)}.`
        : 'A smaller sheet, or other prints on the same one, would use the paper better.',
    ),
  'LAY-08': ({ finding, name, figure, formatter }) => {
    const part = finding.variant === 'strip' ? 'strip' : 'sheet';
    return saying(
      `The last ${part} of ${name('placement')} has ${formatter.count(figure('spare'), 'free place')}.`,
      `${formatter.count(figure('sheets'), part)} of ${formatter.number(figure('perSheet'), 0)} carry ${formatter.number(figure('full'), 0)} for ${formatter.count(figure('pieces'), 'piece')}. Print spares in the free places: they cost no paper.`,
    );
  },
  'LAY-09': ({ name }) =>
    saying(
      `It is not said which side of the paper ${name('printer')} prints.`,
      'On the bare side the ink sinks in and the transfer stays pale. Mark one sheet with an arrow, print a test, and set the side in the workshop.',
    ),
  'LAY-10': ({ finding, name, figure, formatter }) => {
    if (finding.variant === 'nothing') {
      return saying(
        `The borders of the printer and the room for tape leave nothing of ${name('sheet')}.`,
        `So no length of it can carry ${name('placement')}. Check the width of the roll and its longest print in the workshop, or take another paper.`,
      );
    }
    return saying(
      `${name('placement')} at ${formatter.size(figure('widthMm'), figure('heightMm'))} does not fit ${name('sheet')}, either way round.`,
      `The printer reaches ${formatter.length(figure('printableWidthMm'))} across the roll and makes prints up to ${formatter.length(figure('printableHeightMm'))} long. The largest of this shape with room for tape is ${formatter.size(figure('largestWidthMm'), figure('largestHeightMm'))}. Print it at that size, or split it with a join that will be seen.`,
    );
  },
  'LAY-11': ({ finding, name, figure, formatter }) =>
    finding.variant === 'other'
      ? saying(
          `${name('sheet')} is no transfer paper.`,
          'Other paper keeps the ink: the print comes out pale or not at all. Choose a sheet of sublimation paper.',
        )
      : saying(
          `${name('sheet')} of ${formatter.number(figure('grams'), 0)} g/m² is light for ${name('placement')} with ${formatter.share(figure('coverage'))} ink.`,
          `Light paper cockles under heavy ink and the print head strikes it. Use ${formatter.number(figure('wantedGrams'), 0)} g/m² or more, or less ink.`,
        ),
  'LAY-12': ({ finding, name, figure, formatter }) => {
    const sentence = `${name('placement')} is ${formatter.length(figure('widthMm'))} long; there is room for ${formatter.length(figure('roomMm'))} around ${name('size')}.`;
    const apart = formatter.length(figure('apartMm'));
    return finding.variant === 'long'
      ? saying(
          sentence,
          `It is ${apart} too long and laps over itself or the handle, where it prints double. Make it shorter; a strip of paper around the real piece tells how long.`,
        )
      : saying(
          sentence,
          `A bare strip of ${apart} stays where the ends should meet. Make it longer, or press with the gap at the back. A strip of paper around the real piece tells how long.`,
        );
  },
  'LAY-13': ({ finding, name, figure, formatter }) =>
    saying(
      `The side of ${name('size')} leans by ${formatter.number(figure('degrees'), 1)}°.`,
      finding.variant === 'steep'
        ? `A straight ${name('placement')} cannot lie flat on it: it creases and prints double. Use a curved template, fanned to the side; if the picture is one already, say that as the reason.`
        : `On it a straight ${name('placement')} leans too, and its ends do not meet in line. Use a curved template, fanned to the side.`,
    ),
  'LAY-14': ({ finding, name }) =>
    saying(
      finding.variant === 'mirror'
        ? `${name('placement')} and ${name('other')} may share a sheet, but only one of them is mirrored.`
        : `${name('placement')} and ${name('other')} may share a sheet, but are pressed in different ways.`,
      'Pieces of one sheet are easily mixed up once they are cut apart. Keep only prints of one recipe and one way round on a sheet.',
    ),
} satisfies Record<string, Say>;
