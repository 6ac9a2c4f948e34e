import { paperWords, pressureWords } from '@/app/_words/materialWords';
import type { RecipeFacts } from '@/shared/facts/recipeFacts';
import { stepWords } from './stepWords';
import { type WordingsOf, wording } from './wording';

/** Morton and Hearle, Physical Properties of Textile Fibres, fig. 6.2. */
const POLYESTER_MELTS_C = 250;

/** Words of the findings about the recipe. */
export const recipeWords = {
  ...stepWords,
  'REC-01': ({ variant, facts }, formatter) => {
    const set = formatter.temperature(facts.temperatureC);
    const range = `${formatter.temperature(facts.lowC)} to ${formatter.temperature(facts.highC)}`;
    switch (variant) {
      case 'melts':
        return wording(
          `${facts.placement} is set to ${set}, where polyester begins to give way.`,
          `Polyester melts at about ${formatter.temperature(POLYESTER_MELTS_C)}, and platens overshoot: the cloth glazes or sticks. Nothing above ${formatter.temperature(facts.limitC)} is costed; ${range} is usual for ${facts.substrate}.`,
        );
      case 'cold':
        return wording(
          `${facts.placement} is set to ${set}; usual for ${facts.substrate} is ${range}.`,
          'Too cool, the dye does not turn to gas fully and the print stays dull. Set the press higher, or follow the sheet of the blank’s maker and say so.',
        );
      default:
        return wording(
          `${facts.placement} is set to ${set}; usual for ${facts.substrate} is ${range}.`,
          'Too hot, the blank yellows, shines or hardens and the picture blurs. Set the press lower, or follow the sheet of the blank’s maker and say so.',
        );
    }
  },
  'REC-02': ({ variant, facts }, formatter) => {
    const range = `${formatter.number(facts.shortest, 0)} to ${formatter.number(facts.longest, 0)} s`;
    const sentence = `${facts.placement} is pressed for ${formatter.number(facts.seconds, 1)} s; usual for ${facts.substrate} is ${range}.`;
    return variant === 'short'
      ? wording(
          sentence,
          'Pressed too briefly, colours stay pale and much dye is left on the paper. Give it longer.',
        )
      : wording(
          sentence,
          'Pressed too long, the blank yellows and edges blur. Take some seconds off, or lower the heat.',
        );
  },
  'REC-03': ({ variant, facts }, formatter) => {
    const set = 'kpa' in facts ? formatter.pressure(facts.kpa) : pressureWords(facts.pressure);
    const usual = pressureWords(facts.usual);
    return variant === 'hard'
      ? wording(
          `${facts.placement} is pressed with ${set} pressure; ${usual} is usual.`,
          'Heavy pressure leaves lines and shine on polyester and dents soft goods. Ease it off.',
        )
      : wording(
          `${facts.placement} is pressed with ${set} pressure; ${usual} is usual.`,
          'Where the platen barely touches, the print comes out pale in patches. Press a little firmer.',
        );
  },
  'REC-04': ({ facts }, formatter) =>
    wording(
      `${facts.placement} is set to ${formatter.number(facts.typed, 1)} °${facts.unit}.`,
      `That makes sense in °${facts.meant} only: in °${facts.unit} it would ${facts.unit === 'C' ? 'burn the blank' : 'leave the print blank'}. Check which scale the press shows.`,
    ),
  'REC-05': ({ facts }, formatter) =>
    wording(
      `${facts.placement} has no preheat.`,
      `Moisture in ${facts.blank} turns to steam under the platen and leaves blurs and pale spots. Press it bare for about ${formatter.number(facts.seconds, 0)} s and let it cool before laying the transfer.`,
    ),
  'REC-06': ({ variant, facts }) =>
    variant === 'none'
      ? wording(
          `${facts.placement} is pressed without protective paper.`,
          'Dye gas gets into the platen and the pad and marks the next pieces. Lay fresh plain paper above and below.',
        )
      : wording(
          `${facts.placement} is pressed with ${paperWords(variant ?? '')}.`,
          'It keeps steam in or carries dye from the last press to the next. Take fresh plain paper for every press: it lets moisture out and catches stray dye.',
        ),
  'REC-10': ({ variant, facts }, formatter) => {
    if (variant === 'wet')
      return wording(
        `Sheets are pressed ${formatter.number(facts.minutes, 0)} min after they are printed.`,
        `Wet ink smears and steams into blurs. Let them dry until they are touch-dry, ${formatter.number(facts.least, 0)} min at least: plan it in the run.`,
      );
    const sentence = `Sheets lie for ${formatter.hours(facts.hours)} between printing and pressing.`;
    return variant === 'unsealed'
      ? wording(
          sentence,
          `Past ${formatter.hours(facts.most)} in the open, paper draws damp and prints mottle. Store them flat and sealed, or print later.`,
        )
      : wording(
          sentence,
          `Past ${formatter.hours(facts.most)} in the open, paper draws damp and prints mottle. Say whether they lie flat and sealed.`,
        );
  },
  'REC-12': ({ variant, facts }, formatter) =>
    variant === 'never'
      ? wording(
          `This recipe has never been pressed on ${facts.blank}.`,
          `Losses are set to ${formatter.share(facts.scrap)} until you have counts of your own. Press a test or two first.`,
        )
      : wording(
          `This recipe has been pressed on ${facts.blank} ${formatter.count(facts.proven, 'time')}.`,
          `From ${formatter.number(facts.few, 0)} good presses on it counts as known. Look at the first pieces closely.`,
        ),
} satisfies WordingsOf<RecipeFacts>;
