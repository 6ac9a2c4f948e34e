import type { SubstrateFacts } from '@/shared/facts/substrateFacts';
import { blankTraitWords } from './blankTraitWords';
import { type WordingsOf, wording } from './wording';

/** Words of the findings about what is printed on. */
export const substrateWords = {
  ...blankTraitWords,
  'SUB-01': ({ variant, facts }, formatter) => {
    switch (variant) {
      case 'unknown':
        return wording(
          `No fibres are entered for ${facts.blank}.`,
          'The dye holds in polyester only, so without the label nobody can say how the print will wear. Enter the fibres from the sewn label.',
        );
      case 'sum':
        return wording(
          `The fibres of ${facts.blank} add up to ${formatter.share(facts.sum)}.`,
          'A label adds up to 100 %, so one of the shares is off and the judgement of the cloth with it. Compare with the sewn label.',
        );
      case 'tooLittle':
        return wording(
          `${facts.blank} is ${formatter.share(facts.polyester)} polyester.`,
          `The dye holds in the polyester only: most of the picture would wash out. Choose cloth with ${formatter.share(facts.least)} polyester or more, or decorate it another way.`,
        );
      case 'faded':
        return wording(
          `${facts.blank} is ${formatter.share(facts.polyester)} polyester.`,
          `Only about that share of the colour stays after washing, and the print looks worn from the first day. Choose cloth with ${formatter.share(facts.least)} polyester or more, or give the customer's written wish for a vintage look as the reason to go on.`,
        );
      default:
        return wording(
          `${facts.blank} is ${formatter.share(facts.polyester)} polyester.`,
          `Colours come out softer than on full polyester and soften more in the wash. Press a swatch first, or take cloth with ${formatter.share(facts.least)} polyester or more.`,
        );
    }
  },
  'SUB-02': ({ facts }) =>
    wording(
      `${facts.blank} has no polyester: ${facts.fibres}.`,
      'The dye finds nothing to bond with and the print washes away. Choose another blank, or another way of decorating this one.',
    ),
  'SUB-04': ({ variant, facts }, formatter) => {
    const cloth = `${facts.blank} is ${facts.colour} (L* ${formatter.number(facts.lightness, 0)}, C* ${formatter.number(facts.chroma, 0)})`;
    switch (variant) {
      case 'dark':
        return wording(
          `${cloth}, too dark for see-through inks.`,
          'There is no white ink: everything lighter than the cloth disappears. Choose white or a pale shade; a design much darker than the cloth can pass with the customer’s word as the reason.',
        );
      case 'tint':
        return wording(
          `${cloth}, which tints the picture.`,
          'White parts take the colour of the cloth and all colours shift towards it. Choose a paler cloth, or show the customer a pressed swatch.',
        );
      default:
        return wording(
          `${cloth}, a little off white.`,
          'White parts come out in the shade of the cloth. That seldom matters; mention it where the picture has much white.',
        );
    }
  },
  'SUB-05': ({ facts }, formatter) =>
    wording(
      `White in ${facts.artwork} prints as bare cloth.`,
      `There is no white ink: ${formatter.share(facts.share)} of the picture is white inside it and takes the ${facts.colour} of ${facts.blank}. Look at the preview on the cloth, or choose a white blank.`,
    ),
  'SUB-06': ({ variant, facts }) =>
    variant === 'uncoated'
      ? wording(
          `${facts.blank} has no coating for sublimation.`,
          'Bare ceramic, glass, wood and metal take no dye: the print wipes off. Order the coated version and note which face is coated.',
        )
      : wording(
          `Nobody has said whether ${facts.blank} is coated for sublimation.`,
          'Without the coating the print wipes off. Look at the supplier’s page and enter it for this blank.',
        ),
  'SUB-09': ({ variant, facts }, formatter) => {
    const set = formatter.temperature(facts.temperatureC);
    const most = formatter.temperature(facts.mostC);
    return variant === 'over'
      ? wording(
          `The press is set to ${set}, and ${facts.blank} bears ${most} at most.`,
          'It will soften, warp or yellow. Set the press lower and give it longer, or choose a blank that bears the heat.',
        )
      : wording(
          `The press is set to ${set}, close to the ${most} that ${facts.blank} bears.`,
          'Platens run a few degrees off what they show, so some pieces may soften or yellow. Set the press a little lower and give it longer.',
        );
  },
  'SUB-12': ({ variant, facts }) => {
    switch (variant) {
      case 'inside':
        return wording(
          `A seam, zip or button lies inside ${facts.placement}.`,
          'It holds the platen off the cloth and leaves a pale patch around it. Move the print, or make it smaller.',
        );
      case 'bare':
        return wording(
          `A seam, zip or button lies under the platen beside ${facts.placement}.`,
          'It holds part of the platen off the print. Put a press pillow under the print, or let the raised part hang off the platen.',
        );
      default:
        return wording(
          `A seam, zip or button lies under the platen beside ${facts.placement}.`,
          'The pillow or hang-off planned in the recipe takes care of it. Keep it in place for every piece.',
        );
    }
  },
} satisfies WordingsOf<SubstrateFacts>;
