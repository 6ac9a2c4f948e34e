import { type Say, saying } from './sayings';

/** Words of the findings about what is printed on. */
export const substrateWords = {
  'SUB-01': ({ finding, name, figure, formatter }) => {
    const share = formatter.share(figure('polyester'));
    const wanted = formatter.share(figure('least'));
    switch (finding.variant) {
      case 'unknown':
        return saying(
          `No fibres are entered for ${name('blank')}.`,
          'The dye holds in polyester only, so without the label nobody can say how the print will wear. Enter the fibres from the sewn label.',
        );
      case 'sum':
        return saying(
          `The fibres of ${name('blank')} add up to ${formatter.share(figure('sum'))}.`,
          'A label adds up to 100 %, so one of the shares is off and the judgement of the cloth with it. Compare with the sewn label.',
        );
      case 'tooLittle':
        return saying(
          `${name('blank')} is ${share} polyester.`,
          `The dye holds in the polyester only: most of the picture would wash out. Choose cloth with ${wanted} polyester or more, or decorate it another way.`,
        );
      case 'faded':
        return saying(
          `${name('blank')} is ${share} polyester.`,
          `Only about that share of the colour stays after washing, and the print looks worn from the first day. Choose cloth with ${wanted} polyester or more, or give the customer's written wish for a vintage look as the reason to go on.`,
        );
      default:
        return saying(
          `${name('blank')} is ${share} polyester.`,
          `Colours come out softer than on full polyester and soften more in the wash. Press a swatch first, or take cloth with ${wanted} polyester or more.`,
        );
    }
  },
  'SUB-02': ({ name }) =>
    saying(
      `${name('blank')} has no polyester: ${name('fibres')}.`,
      'The dye finds nothing to bond with and the print washes away. Choose another blank, or another way of decorating this one.',
    ),
  'SUB-04': ({ finding, name, figure, formatter }) => {
    const cloth = `${name('blank')} is ${name('colour')} (L* ${formatter.number(figure('lightness'), 0)}, C* ${formatter.number(figure('chroma'), 0)})`;
    switch (finding.variant) {
      case 'dark':
        return saying(
          `${cloth}, too dark for see-through inks.`,
          'There is no white ink: everything lighter than the cloth disappears. Choose white or a pale shade; a design much darker than the cloth can pass with the customer’s word as the reason.',
        );
      case 'tint':
        return saying(
          `${cloth}, which tints the picture.`,
          'White parts take the colour of the cloth and all colours shift towards it. Choose a paler cloth, or show the customer a pressed swatch.',
        );
      default:
        return saying(
          `${cloth}, a little off white.`,
          'White parts come out in the shade of the cloth. That seldom matters; mention it where the picture has much white.',
        );
    }
  },
  'SUB-05': ({ name, figure, formatter }) =>
    saying(
      `White in ${name('artwork')} prints as bare cloth.`,
      `There is no white ink: ${formatter.share(figure('share'))} of the picture is white inside it and takes the ${name('colour')} of ${name('blank')}. Look at the preview on the cloth, or choose a white blank.`,
    ),
  'SUB-06': ({ finding, name }) =>
    finding.variant === 'uncoated'
      ? saying(
          `${name('blank')} has no coating for sublimation.`,
          'Bare ceramic, glass, wood and metal take no dye: the print wipes off. Order the coated version and note which face is coated.',
        )
      : saying(
          `Nobody has said whether ${name('blank')} is coated for sublimation.`,
          'Without the coating the print wipes off. Look at the supplier’s page and enter it for this blank.',
        ),
  'SUB-09': ({ finding, name, figure, formatter }) => {
    const set = formatter.temperature(figure('temperatureC'));
    const most = formatter.temperature(figure('mostC'));
    return finding.variant === 'over'
      ? saying(
          `The press is set to ${set}, and ${name('blank')} bears ${most} at most.`,
          'It will soften, warp or yellow. Set the press lower and give it longer, or choose a blank that bears the heat.',
        )
      : saying(
          `The press is set to ${set}, close to the ${most} that ${name('blank')} bears.`,
          'Platens run a few degrees off what they show, so some pieces may soften or yellow. Set the press a little lower and give it longer.',
        );
  },
  'SUB-12': ({ finding, name }) => {
    switch (finding.variant) {
      case 'inside':
        return saying(
          `A seam, zip or button lies inside ${name('placement')}.`,
          'It holds the platen off the cloth and leaves a pale patch around it. Move the print, or make it smaller.',
        );
      case 'bare':
        return saying(
          `A seam, zip or button lies under the platen beside ${name('placement')}.`,
          'It holds part of the platen off the print. Put a press pillow under the print, or let the raised part hang off the platen.',
        );
      default:
        return saying(
          `A seam, zip or button lies under the platen beside ${name('placement')}.`,
          'The pillow or hang-off planned in the recipe takes care of it. Keep it in place for every piece.',
        );
    }
  },
} satisfies Record<string, Say>;
