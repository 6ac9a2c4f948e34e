import type { Formatter } from '@/app/_words/formatter';
import { wholePpi } from '@/app/_words/wholePpi';
import type { ArtworkFacts } from '@/shared/facts/artworkFacts';
import type { FindingsById } from '@/shared/finding';
import { type WordingsOf, wording } from './wording';

/** From here on a share says less than “twice as tall”. */
const OTHER_SHAPE = 0.5;

function density({ severity, facts }: FindingsById['ART-01' | 'ART-02'], formatter: Formatter) {
  const sentence = `${facts.artwork} has ${wholePpi(facts.ppi, formatter)} ppi at ${formatter.size(facts.widthMm, facts.heightMm)}.`;
  const clean = `It is clean up to ${formatter.size(facts.cleanWidthMm, facts.cleanHeightMm)} (${formatter.number(facts.clean, 0)} ppi).`;
  switch (severity) {
    case 'stop':
      return wording(
        sentence,
        `Edges and faces will look blocky. ${clean} Ask for a larger file or line art; for pixel art meant to look so, say that as the reason.`,
      );
    case 'caution':
      return wording(sentence, `Edges will look soft. ${clean} Ask for a larger file, or print it smaller.`);
    case 'note':
      return wording(sentence, `Fine lines may look a touch soft close up. ${clean}`);
    default:
      return severity satisfies never;
  }
}

/** Words of the findings about the artwork. */
export const artworkWords = {
  'ART-01': density,
  'ART-02': density,
  'ART-03': ({ facts }, formatter) =>
    wording(
      `${facts.artwork} has enough pixels but looks enlarged.`,
      `Its edges take ${formatter.number(facts.edgePx, 1)} px from dark to light; sharp ones take one or two. It will print as soft as it looks close up. Ask for the original file or line art.`,
    ),
  'ART-04': ({ variant, facts }, formatter) => {
    const box = `its box of ${formatter.size(facts.widthMm, facts.heightMm)}`;
    const isWide = facts.insideWidthMm / facts.insideHeightMm > facts.widthMm / facts.heightMm;
    const sentence =
      facts.off > OTHER_SHAPE
        ? `${facts.artwork} has quite another shape than ${box}: about ${formatter.number(1 + facts.off, 1)} times as ${isWide ? 'wide for its height' : 'tall for its width'}.`
        : `${facts.artwork} and ${box} differ in shape by ${formatter.share(facts.off)}.`;
    const inside = formatter.size(facts.insideWidthMm, facts.insideHeightMm);
    switch (variant) {
      case 'stretch':
        return wording(
          sentence,
          `Stretched to fill the box, circles turn into eggs and faces grow wide. Fit the picture inside, at ${inside}.`,
        );
      case 'fill':
        return wording(
          sentence,
          `Filling the box cuts ${formatter.length(facts.cropMm)} off the picture. Check that nothing is lost, or print it whole at ${inside}.`,
        );
      default:
        return wording(
          sentence,
          `Fitted inside, the picture comes out at ${inside} with a bare strip beside it. Take that as the print size, or change the box.`,
        );
    }
  },
  'ART-05': ({ variant, facts }, formatter) => {
    const isReversed = facts.reversed === 'yes';
    const part = variant === 'letters' ? 'letters' : 'lines';
    return wording(
      `The smallest ${part} of ${facts.artwork} are ${formatter.number(facts.mm, 2)} mm ${part === 'letters' ? 'high' : 'wide'} in ${facts.placement}.`,
      `Dye spreads as it turns to gas${isReversed ? ', and into light letters and lines on dark from both sides' : ''}: under ${formatter.number(facts.leastMm, 2)} mm they may fill in. Print the picture ${formatter.length(facts.neededWidthMm)} wide or wider, or ask for bolder ${part}.`,
    );
  },
  'ART-06': ({ facts }, formatter) =>
    wording(
      `${facts.artwork} stands on a solid background.`,
      `It lays down ${formatter.share(facts.ink)} of ink there and will print as a coloured box. Take the background out in a picture program, or say that it is meant so.`,
    ),
  'ART-07': ({ variant, facts }, formatter) =>
    variant === 'fading'
      ? wording(
          `${formatter.share(facts.share)} of ${facts.artwork} fades out.`,
          'Glows and soft shadows end in a tint too pale to see on a screen and plain to see on cloth. Press a swatch, or end them with a clear edge.',
        )
      : wording(
          `${facts.artwork} has pale specks where it should be white.`,
          `A JPEG leaves them around edges, ${formatter.share(facts.share)} of this one, and they print as a visible tint. Ask for a PNG, or clean the white in a picture program.`,
        ),
  'ART-08': ({ variant, facts }) =>
    variant === 'unreadable'
      ? wording(
          `The colour profile of ${facts.artwork} cannot be read.`,
          'It is damaged or of another kind of colours, so the picture is taken as sRGB and may print in other colours than were meant. Open it in a picture program, turn it into sRGB and save it anew, or ask for such a file.',
        )
      : wording(
          `${facts.artwork} does not say what its colours mean.`,
          'It is taken as sRGB, as nearly all such files are. Where colours matter, ask for a file saved with its profile, and keep one profile for your ink, paper and cloth.',
        ),
  'ART-10': ({ variant, facts }, formatter) => {
    if (variant === 'heavyPixels' || variant === 'tooHeavyPixels') {
      const what =
        facts.flooded > 0
          ? `over 180 % of two colours, or over 250 % in all where dark parts get hardly any black`
          : `over 180 % of two colours`;
      const share = `${formatter.share(facts.share)} of ${facts.artwork} is heavy with ink: ${what}.`;
      return variant === 'tooHeavyPixels'
        ? wording(
            share,
            `Above ${formatter.share(facts.most)} the paper cockles, the ink stays wet and the picture ghosts. Lower the ink limit in the print settings, lighten the picture, or give the swatch you pressed as the reason.`,
          )
        : wording(
            share,
            'Such parts dry slowly and may ghost. Let the print dry longer, and try a lower ink limit.',
          );
    }
    const sentence = `${facts.artwork} lays down ${formatter.share(facts.coverage)} of ink on average.`;
    return variant === 'tooHeavy'
      ? wording(
          sentence,
          `Above ${formatter.share(facts.most)} the paper cockles, the ink stays wet and the picture ghosts. Lower the ink limit in the print settings, or lighten the picture.`,
        )
      : wording(
          sentence,
          `Above ${formatter.share(facts.most)} prints dry slowly and may ghost. Let them dry longer, and try a lower ink limit.`,
        );
  },
  'ART-11': ({ variant, facts }) =>
    variant === 'twice'
      ? wording(
          `${facts.placement} is mirrored twice: in the picture ${facts.artwork} and by the printer.`,
          'Twice backwards is forwards, so it will read the wrong way on the piece. Switch one of the two off.',
        )
      : wording(
          `${facts.placement} is not mirrored.`,
          'A transfer is laid face down, so text will read backwards on the piece. Print it mirrored: on the sheet it must look backwards.',
        ),
  'ART-09': ({ facts }) =>
    wording(
      `A colour of ${facts.artwork} has to match one the customer named.`,
      'Ink, heat and coating shift every colour. Match by eye to a pressed swatch, charge the test, and have the swatch approved before the run.',
    ),
  'ART-12': ({ variant, facts }, formatter) =>
    variant === 'twice'
      ? wording(
          `“${facts.name}” stands twice in the names of ${facts.line}${facts.others > 0 ? `, and so do ${formatter.count(facts.others, 'other')}` : ''}.`,
          'Two people may share a name, or one was typed twice and another left out. Ask the customer.',
        )
      : wording(
          `The list has ${formatter.count(facts.names, 'name')} for ${formatter.count(facts.pieces, 'piece')} of ${facts.line}.`,
          'Somebody would go without, or a piece would be printed for nobody. Mend the list or the sizes.',
        ),
  'ART-13': ({ variant, facts }, formatter) =>
    variant === 'other'
      ? wording(
          `What will be printed is not the version the customer approved: ${facts.artworks}.`,
          `Version ${formatter.number(facts.approved, 0)} was approved, version ${formatter.number(facts.version, 0)} is in the job. Have it approved before buying or printing.`,
        )
      : wording(
          `The customer has not approved the proof yet: ${facts.artworks}.`,
          'For an estimate that is fine. Wait for the yes before you buy blanks or print: a misspelt name is found by the customer first.',
        ),
  'ART-14': ({ variant, facts }) => {
    switch (variant) {
      case 'none':
        return wording(
          `There is no permission to use ${facts.artwork}.`,
          'Printing or selling it can cost far more than the job brings. Get written permission or use another picture. Ask your local authority or an adviser where you are unsure.',
        );
      case 'promised':
        return wording(
          `Permission for ${facts.artwork} is promised, not yet given.`,
          'Until it is in writing the risk is yours. Ask for the letter before printing. Where you are unsure, ask your local authority.',
        );
      default:
        return wording(
          `Nobody has said who owns ${facts.artwork}.`,
          'Crests, characters, team names and pictures found online belong to somebody. Note the owner or the licence, and get permission in writing. Where you are unsure, ask your local authority.',
        );
    }
  },
  'ART-15': ({ variant, facts }, formatter) =>
    variant === 'unmeasured'
      ? wording(
          `${facts.placement} covers the whole face of the piece.`,
          `Laid a little off, a white line shows along an edge. Let the picture run ${formatter.length(facts.wantedMm)} past every edge, and say how far it does.`,
        )
      : wording(
          `${facts.placement} runs ${formatter.length(facts.mm)} past the edge of the piece.`,
          variant === 'none'
            ? `Nobody lays a transfer that exactly: a white line will show along an edge. Let it run ${formatter.length(facts.wantedMm)} past.`
            : `Laid a little off, a white line may show along an edge. ${formatter.length(facts.wantedMm)} is safe.`,
        ),
  'ART-17': ({ facts }) =>
    wording(
      `${facts.artwork} has live text in a font that was not on this device: ${facts.fonts}.`,
      'It is set in another font, of another shape and width, and prints so. Open it in the drawing program it comes from, turn the text into outlines (“convert to curves”), save it and choose it again.',
    ),
  'ART-16': ({ facts }, formatter) =>
    wording(
      `In ${facts.placement} something that must be seen whole comes within ${formatter.length(facts.mm)} of an edge, a handle or a seam.`,
      `The press reaches there last and the colour fades. Keep it ${formatter.length(facts.wantedMm)} away, or make the picture smaller.`,
    ),
} satisfies WordingsOf<ArtworkFacts>;
