import type { RecipeFacts } from '@/shared/facts/recipeFacts';
import { type WordingsOf, wording } from './wording';

/** Words of the findings about the steps of a recipe, and the air in the room. */
export const stepWords = {
  'REC-07': ({ facts }) =>
    wording(
      `${facts.line} is pressed without a lint roller.`,
      'One fibre that nobody sees leaves a coloured speck for good. Roll each piece before the transfer is laid.',
    ),
  'REC-08': ({ facts }) =>
    wording(
      `The transfer on ${facts.line} is not taped on all four edges.`,
      'A shift of 1 mm when the press opens prints a second, pale picture. Use heat-resistant tape on each edge.',
    ),
  'REC-09': ({ variant, facts }, formatter) =>
    variant === 'cloth'
      ? wording(
          facts.seconds > 0
            ? `${facts.line} cools for ${formatter.number(facts.seconds, 0)} s under the transfer.`
            : `${facts.line} does not cool under the transfer.`,
          `Opened hot, the dye still moves and the print smears. Let it lie for ${formatter.number(facts.wanted, 0)} to 15 s before you peel.`,
        )
      : wording(
          `${facts.line} is not cooled by a fan.`,
          'Hard goods hold their heat, and the picture goes on spreading in them. Cool them quickly and all round.',
        ),
  'REC-11': ({ variant, facts }, formatter) => {
    const range = `${formatter.share(facts.least)} to ${formatter.share(facts.most)}`;
    switch (variant) {
      case 'dry':
        return wording(
          `The air in the room has ${formatter.share(facts.humidity)} humidity; ${range} is right.`,
          'Dry air clogs nozzles and brings lint and static. Put up a humidifier, or a bowl of water.',
        );
      case 'damp':
        return wording(
          `The air in the room has ${formatter.share(facts.humidity)} humidity; ${range} is right.`,
          'Damp paper bleeds and steams under the press. Heat or dry the room, and keep paper sealed.',
        );
      default:
        return wording(
          `The air in the room is outside ${range} humidity.`,
          'Dry air clogs nozzles and brings lint; damp paper bleeds. Measure it, and keep paper sealed.',
        );
    }
  },
} satisfies WordingsOf<Pick<RecipeFacts, 'REC-07' | 'REC-08' | 'REC-09' | 'REC-11'>>;
