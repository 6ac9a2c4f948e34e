import type { SheetFacts } from '@/shared/facts/sheetFacts';
import { type WordingsOf, wording } from './wording';

/** Words of the findings about sheets. */
export const sheetWords = {
  'LAY-01': ({ variant, facts }, formatter) => {
    if (variant === 'speck') {
      return wording(
        `${facts.placement} is ${formatter.size(facts.widthMm, facts.heightMm)}.`,
        `A print under ${formatter.length(facts.leastMm)} can be neither cut nor taped; most likely the unit slipped. Check its width and height.`,
      );
    }
    const sentence = `${facts.placement} at ${formatter.size(facts.widthMm, facts.heightMm)} does not fit ${facts.sheet}, either way round.`;
    if (variant === 'nothing') {
      return wording(
        sentence,
        'The borders of the printer and the room for tape leave nothing of the sheet, so no print would fit. Check both in the workshop, or use a larger sheet.',
      );
    }
    return wording(
      sentence,
      `The printer reaches ${formatter.size(facts.printableWidthMm, facts.printableHeightMm)} of the sheet. The largest print of this shape with room for tape is ${formatter.size(facts.largestWidthMm, facts.largestHeightMm)}. Print it at that size, or on a larger sheet.`,
    );
  },
  'LAY-02': ({ facts }, formatter) =>
    wording(
      `${facts.placement} at ${formatter.size(facts.widthMm, facts.heightMm)} fits ${facts.sheet} only when turned.`,
      'Turn the picture by 90° before sending it, and mark which way the sheet is fed.',
    ),
  'LAY-03': ({ variant, facts }, formatter) => {
    const sentence = `${facts.placement} at ${formatter.size(facts.widthMm, facts.heightMm)} fits ${facts.sheet} only without borders.`;
    const largest = formatter.size(facts.largestWidthMm, facts.largestHeightMm);
    return variant === 'unsupported'
      ? wording(
          sentence,
          `This printer leaves a border of its own, so the edge of the picture would be missing. Print it at ${largest}, or on a larger sheet.`,
        )
      : wording(
          sentence,
          `Borderless printing enlarges a picture by one to three per cent and leaves no dry edge for tape. Measure a test print, or print it at ${largest}.`,
        );
  },
  'LAY-04': ({ variant, facts }, formatter) => {
    const sentence = `${facts.placement} leaves ${formatter.length(facts.marginMm)} of clean paper to the edge of the sheet.`;
    if (variant === 'outer') {
      return wording(
        sentence,
        `Cut apart it has no more than that for tape on that side. Leave ${formatter.length(facts.wantedMm)}: print it a little smaller, or give the printer that border in the workshop.`,
      );
    }
    return variant === 'none'
      ? wording(
          sentence,
          `There is nowhere to tape, and a transfer that shifts on a garment prints double. Leave ${formatter.length(facts.wantedMm)} on every side.`,
        )
      : wording(
          sentence,
          `Tape would lie on the picture. Leave ${formatter.length(facts.wantedMm)} on every side, or tape with great care.`,
        );
  },
  'LAY-05': ({ facts }, formatter) =>
    wording(
      `The edge of the paper lies ${formatter.length(facts.edgeMm)} beside ${facts.placement}.`,
      `${facts.blank} keeps the line it presses. Tear the edge to a feather instead of cutting it, leave ${formatter.length(facts.wantedMm)}, or use a press pillow.`,
    ),
  'LAY-06': ({ variant, facts }, formatter) => {
    const sentence = `Pieces that share a sheet, such as ${facts.placement}, lie ${formatter.length(facts.gutterMm)} apart.`;
    const wanted = formatter.length(facts.wantedMm);
    return variant === 'none'
      ? wording(
          sentence,
          `No knife goes through there without cutting a picture. Leave ${wanted} between pieces.`,
        )
      : wording(
          sentence,
          `Cutting by hand is tight there, and little is left for tape. Leave ${wanted} between pieces.`,
        );
  },
  'LAY-07': ({ variant, facts }, formatter) =>
    wording(
      `${formatter.share(facts.empty)} of each ${facts.sheet} stays empty beside ${facts.placement}.`,
      variant === 'smaller'
        ? `At ${formatter.size(facts.widthMm, facts.heightMm)} a sheet carries ${formatter.number(facts.betterPerSheet, 0)} instead of ${formatter.number(facts.perSheet, 0)}.`
        : 'A smaller sheet, or other prints on the same one, would use the paper better.',
    ),
  'LAY-08': ({ variant, facts }, formatter) => {
    const part = variant === 'strip' ? 'strip' : 'sheet';
    return wording(
      `The last ${part} of ${facts.placement} has ${formatter.count(facts.spare, 'free place')}.`,
      `${formatter.count(facts.sheets, part)} of ${formatter.number(facts.perSheet, 0)} carry ${formatter.number(facts.full, 0)} for ${formatter.count(facts.pieces, 'piece')}. Print spares in the free places: they cost no paper.`,
    );
  },
  'LAY-09': ({ facts }) =>
    wording(
      `Nobody is sure which side of the paper ${facts.printer} prints.`,
      'On the bare side the ink sinks in and the transfer stays pale. Mark one sheet with an arrow, print a test, and set the side in the workshop.',
    ),
  'LAY-10': ({ variant, facts }, formatter) => {
    if (variant === 'nothing') {
      return wording(
        `The borders of the printer and the room for tape leave nothing of ${facts.sheet}.`,
        `So no length of it can carry ${facts.placement}. Check the width of the roll and its longest print in the workshop, or take another paper.`,
      );
    }
    if (variant === 'longSheet') {
      return wording(
        `${facts.sheet} is ${formatter.length(facts.lengthMm)} long; ${facts.printer} takes pages up to ${formatter.length(facts.longestMm)}.`,
        'The printer’s window cuts off what is longer, or prints it smaller. Use a shorter sheet or another printer, or mend the longest page in the workshop.',
      );
    }
    if (variant === 'longPrint') {
      return wording(
        `Prints on ${facts.sheet} come to ${formatter.length(facts.lengthMm)}; ${facts.printer} takes pages up to ${formatter.length(facts.longestMm)}.`,
        'The printer’s window cuts off what is longer, or prints it smaller. Split the run into shorter prints, or mend the longest page in the workshop.',
      );
    }
    return wording(
      `${facts.placement} at ${formatter.size(facts.widthMm, facts.heightMm)} does not fit ${facts.sheet}, either way round.`,
      `The printer reaches ${formatter.length(facts.printableWidthMm)} across the roll and makes prints up to ${formatter.length(facts.printableHeightMm)} long. The largest of this shape with room for tape is ${formatter.size(facts.largestWidthMm, facts.largestHeightMm)}. Print it at that size, or split it with a join that will be seen.`,
    );
  },
  'LAY-11': ({ variant, facts }, formatter) =>
    variant === 'other'
      ? wording(
          `${facts.sheet} is no transfer paper.`,
          'Other paper keeps the ink: the print comes out pale or not at all. Choose a sheet of sublimation paper.',
        )
      : wording(
          `${facts.sheet} of ${formatter.number(facts.grams, 0)} g/m² is light for ${facts.placement} with ${formatter.share(facts.coverage)} ink.`,
          `Light paper cockles under heavy ink and the print head strikes it. Use ${formatter.number(facts.wantedGrams, 0)} g/m² or more, or less ink.`,
        ),
  'LAY-12': ({ variant, facts }, formatter) => {
    const sentence = `${facts.placement} is ${formatter.length(facts.widthMm)} long; there is room for ${formatter.length(facts.roomMm)} around ${facts.size}.`;
    const apart = formatter.length(facts.apartMm);
    return variant === 'long'
      ? wording(
          sentence,
          `It is ${apart} too long and laps over itself or the handle, where it prints double. Make it shorter; a strip of paper around the real piece tells how long.`,
        )
      : wording(
          sentence,
          `A bare strip of ${apart} stays where the ends should meet. Make it longer, or press with the gap at the back. A strip of paper around the real piece tells how long.`,
        );
  },
  'LAY-13': ({ variant, facts }, formatter) =>
    wording(
      `The side of ${facts.size} leans by ${formatter.number(facts.degrees, 1)}°.`,
      variant === 'steep'
        ? `A straight ${facts.placement} cannot lie flat on it: it creases and prints double. Use a curved template, fanned to the side; if the picture is one already, say that as the reason.`
        : `On it a straight ${facts.placement} leans too, and its ends do not meet in line. Use a curved template, fanned to the side.`,
    ),
  'LAY-14': ({ variant, facts }) =>
    wording(
      variant === 'mirror'
        ? `${facts.placement} and ${facts.other} may share a sheet, but only one of them is mirrored.`
        : `${facts.placement} and ${facts.other} may share a sheet, but are pressed in different ways.`,
      'Pieces of one sheet are easily mixed up once they are cut apart. Keep only prints of one recipe and one way round on a sheet.',
    ),
} satisfies WordingsOf<SheetFacts>;
