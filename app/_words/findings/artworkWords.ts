import { type Say, saying, type Told } from './sayings';

function density({ finding, name, figure, formatter }: Told) {
  const sentence = `${name('artwork')} has ${formatter.number(Math.floor(figure('ppi') + 1e-6), 0)} ppi at ${formatter.size(figure('widthMm'), figure('heightMm'))}.`;
  const clean = `It is clean up to ${formatter.size(figure('cleanWidthMm'), figure('cleanHeightMm'))} (${formatter.number(figure('clean'), 0)} ppi).`;
  switch (finding.severity) {
    case 'stop':
      return saying(
        sentence,
        `Edges and faces will look blocky. ${clean} Ask for a larger file or line art; for pixel art meant to look so, say that as the reason.`,
      );
    case 'caution':
      return saying(sentence, `Edges will look soft. ${clean} Ask for a larger file, or print it smaller.`);
    case 'note':
      return saying(sentence, `Fine lines may look a touch soft close up. ${clean}`);
    default:
      return finding.severity satisfies never;
  }
}

/** Words of the findings about the artwork. */
export const artworkWords = {
  'ART-01': density,
  'ART-02': density,
  'ART-03': ({ name, figure, formatter }) =>
    saying(
      `${name('artwork')} has enough pixels but looks enlarged.`,
      `Its edges take ${formatter.number(figure('edgePx'), 1)} px from dark to light; sharp ones take one or two. It will print as soft as it looks close up. Ask for the original file or line art.`,
    ),
  'ART-04': ({ finding, name, figure, formatter }) => {
    const sentence = `${name('artwork')} and its box of ${formatter.size(figure('widthMm'), figure('heightMm'))} differ in shape by ${formatter.share(figure('off'))}.`;
    const inside = formatter.size(figure('insideWidthMm'), figure('insideHeightMm'));
    switch (finding.variant) {
      case 'stretch':
        return saying(
          sentence,
          `Stretched to fill the box, circles turn into eggs and faces grow wide. Fit the picture inside, at ${inside}.`,
        );
      case 'fill':
        return saying(
          sentence,
          `Filling the box cuts ${formatter.length(figure('cropMm'))} off the picture. Check that nothing is lost, or print it whole at ${inside}.`,
        );
      default:
        return saying(
          sentence,
          `Fitted inside, the picture comes out at ${inside} with a bare strip beside it. Take that as the print size, or change the box.`,
        );
    }
  },
  'ART-05': ({ finding, name, figure, formatter }) => {
    const isReversed = name('reversed') === 'yes';
    const part = finding.variant === 'letters' ? 'letters' : 'lines';
    return saying(
      `The smallest ${part} of ${name('artwork')} are ${formatter.number(figure('mm'), 2)} mm ${part === 'letters' ? 'high' : 'wide'} in ${name('placement')}.`,
      `Dye spreads as it turns to gas${isReversed ? ', and into light letters and lines on dark from both sides' : ''}: under ${formatter.number(figure('leastMm'), 2)} mm they may fill in. Print the picture ${formatter.length(figure('neededWidthMm'))} wide or wider, or ask for bolder ${part}.`,
    );
  },
  'ART-06': ({ name, figure, formatter }) =>
    saying(
      `${name('artwork')} stands on a solid background.`,
      `It lays down ${formatter.share(figure('ink'))} of ink there and will print as a coloured box. Take the background out in a picture program, or say that it is meant so.`,
    ),
  'ART-07': ({ finding, name, figure, formatter }) =>
    finding.variant === 'fading'
      ? saying(
          `${formatter.share(figure('share'))} of ${name('artwork')} fades out.`,
          'Glows and soft shadows end in a tint too pale to see on a screen and plain to see on cloth. Press a swatch, or end them with a clear edge.',
        )
      : saying(
          `${name('artwork')} has pale specks where it should be white.`,
          `A JPEG leaves them around edges, ${formatter.share(figure('share'))} of this one, and they print as a visible tint. Ask for a PNG, or clean the white in a picture program.`,
        ),
  'ART-08': ({ name }) =>
    saying(
      `${name('artwork')} does not say what its colours mean.`,
      'It is taken as sRGB, as nearly all such files are. Where colours matter, ask for a file saved with its profile, and keep one profile for your ink, paper and cloth.',
    ),
  'ART-10': ({ finding, name, figure, formatter }) => {
    if (finding.variant === 'heavyPixels' || finding.variant === 'tooHeavyPixels') {
      const share = `${formatter.share(figure('share'))} of ${name('artwork')} is heavy with ink, more than 180 % of its channels.`;
      return finding.variant === 'tooHeavyPixels'
        ? saying(
            share,
            `Above ${formatter.share(figure('most'))} the paper cockles, the ink stays wet and the picture ghosts. Lower the ink limit in the print settings, lighten the picture, or give the swatch you pressed as the reason.`,
          )
        : saying(
            share,
            'Such parts dry slowly and may ghost. Let the print dry longer, and try a lower ink limit.',
          );
    }
    const sentence = `${name('artwork')} lays down ${formatter.share(figure('coverage'))} of ink on average.`;
    return finding.variant === 'tooHeavy'
      ? saying(
          sentence,
          `Above ${formatter.share(figure('most'))} the paper cockles, the ink stays wet and the picture ghosts. Lower the ink limit in the print settings, or lighten the picture.`,
        )
      : saying(
          sentence,
          `Above ${formatter.share(figure('most'))} prints dry slowly and may ghost. Let them dry longer, and try a lower ink limit.`,
        );
  },
  'ART-11': ({ finding, name }) =>
    finding.variant === 'twice'
      ? saying(
          `${name('placement')} is mirrored twice: in the picture ${name('artwork')} and by the printer.`,
          'Twice backwards is forwards, so it will read the wrong way on the piece. Switch one of the two off.',
        )
      : saying(
          `${name('placement')} is not mirrored.`,
          'A transfer is laid face down, so text will read backwards on the piece. Print it mirrored: on the sheet it must look backwards.',
        ),
  'ART-09': ({ name }) =>
    saying(
      `A colour of ${name('artwork')} has to match one the customer named.`,
      'Ink, heat and coating shift every colour. Match by eye to a pressed swatch, charge the test, and have the swatch approved before the run.',
    ),
  'ART-12': ({ finding, name, figure, formatter }) =>
    finding.variant === 'twice'
      ? saying(
          `“${name('name')}” stands twice in the names of ${name('line')}${figure('others') > 0 ? `, and so do ${formatter.count(figure('others'), 'other')}` : ''}.`,
          'Two people may share a name, or one was typed twice and another left out. Ask the customer.',
        )
      : saying(
          `The list has ${formatter.count(figure('names'), 'name')} for ${formatter.count(figure('pieces'), 'piece')} of ${name('line')}.`,
          'Somebody would go without, or a piece would be printed for nobody. Mend the list or the sizes.',
        ),
  'ART-13': ({ finding, name, figure, formatter }) =>
    finding.variant === 'other'
      ? saying(
          `What will be printed is not the version the customer approved: ${name('artworks')}.`,
          `Version ${formatter.number(figure('approved'), 0)} was approved, version ${formatter.number(figure('version'), 0)} is in the job. Have it approved before buying or printing.`,
        )
      : saying(
          `The customer has not approved the proof yet: ${name('artworks')}.`,
          'For an estimate that is fine. Wait for the yes before you buy blanks or print: a misspelt name is found by the customer first.',
        ),
  'ART-14': ({ finding, name }) => {
    switch (finding.variant) {
      case 'none':
        return saying(
          `There is no permission to use ${name('artwork')}.`,
          'Printing or selling it can cost far more than the job brings. Get written permission or use another picture. Ask your local authority or an adviser where you are unsure.',
        );
      case 'promised':
        return saying(
          `Permission for ${name('artwork')} is promised, not yet given.`,
          'Until it is in writing the risk is yours. Ask for the letter before printing. Where you are unsure, ask your local authority.',
        );
      default:
        return saying(
          `Nobody has said who owns ${name('artwork')}.`,
          'Crests, characters, team names and pictures found online belong to somebody. Note the owner or the licence, and get permission in writing. Where you are unsure, ask your local authority.',
        );
    }
  },
  'ART-15': ({ finding, name, figure, formatter }) =>
    finding.variant === 'unmeasured'
      ? saying(
          `${name('placement')} covers the whole face of the piece.`,
          `Laid a little off, a white line shows along an edge. Let the picture run ${formatter.length(figure('wantedMm'))} past every edge, and say how far it does.`,
        )
      : saying(
          `${name('placement')} runs ${formatter.length(figure('mm'))} past the edge of the piece.`,
          finding.variant === 'none'
            ? `Nobody lays a transfer that exactly: a white line will show along an edge. Let it run ${formatter.length(figure('wantedMm'))} past.`
            : `Laid a little off, a white line may show along an edge. ${formatter.length(figure('wantedMm'))} is safe.`,
        ),
  'ART-16': ({ name, figure, formatter }) =>
    saying(
      `In ${name('placement')} something that must be seen whole comes within ${formatter.length(figure('mm'))} of an edge, a handle or a seam.`,
      `The press reaches there last and the colour fades. Keep it ${formatter.length(figure('wantedMm'))} away, or make the picture smaller.`,
    ),
} satisfies Record<string, Say>;
