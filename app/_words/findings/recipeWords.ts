import { paperWords, pressureWords } from '@/app/_words/materialWords';
import { type Say, saying } from './sayings';

/** Morton and Hearle, Physical Properties of Textile Fibres, fig. 6.2. */
const POLYESTER_MELTS_C = 250;

/** Words of the findings about the recipe. */
export const recipeWords = {
  'REC-01': ({ finding, name, figure, formatter }) => {
    const set = formatter.temperature(figure('temperatureC'));
    const range = `${formatter.temperature(figure('lowC'))} to ${formatter.temperature(figure('highC'))}`;
    switch (finding.variant) {
      case 'melts':
        return saying(
          `${name('placement')} is set to ${set}, where polyester begins to give way.`,
          `Polyester melts at about ${formatter.temperature(POLYESTER_MELTS_C)}, and platens overshoot: the cloth glazes or sticks. Nothing above ${formatter.temperature(figure('limitC'))} is costed; ${range} is usual for ${name('substrate')}.`,
        );
      case 'cold':
        return saying(
          `${name('placement')} is set to ${set}; usual for ${name('substrate')} is ${range}.`,
          'Too cool, the dye does not turn to gas fully and the print stays dull. Set the press higher, or follow the sheet of the blank’s maker and say so.',
        );
      default:
        return saying(
          `${name('placement')} is set to ${set}; usual for ${name('substrate')} is ${range}.`,
          'Too hot, the blank yellows, shines or hardens and the picture blurs. Set the press lower, or follow the sheet of the blank’s maker and say so.',
        );
    }
  },
  'REC-02': ({ finding, name, figure, formatter }) => {
    const range = `${formatter.number(figure('shortest'), 0)} to ${formatter.number(figure('longest'), 0)} s`;
    const sentence = `${name('placement')} is pressed for ${formatter.number(figure('seconds'), 1)} s; usual for ${name('substrate')} is ${range}.`;
    return finding.variant === 'short'
      ? saying(
          sentence,
          'Pressed too briefly, colours stay pale and much dye is left on the paper. Give it longer.',
        )
      : saying(
          sentence,
          'Pressed too long, the blank yellows and edges blur. Take some seconds off, or lower the heat.',
        );
  },
  'REC-03': ({ finding, name, formatter }) => {
    const found = finding.found;
    const set =
      typeof found === 'object' && found !== null
        ? formatter.pressure(found.value)
        : pressureWords(name('pressure'));
    const usual = pressureWords(name('usual'));
    return finding.variant === 'hard'
      ? saying(
          `${name('placement')} is pressed with ${set} pressure; ${usual} is usual.`,
          'Heavy pressure leaves lines and shine on polyester and dents soft goods. Ease it off.',
        )
      : saying(
          `${name('placement')} is pressed with ${set} pressure; ${usual} is usual.`,
          'Where the platen barely touches, the print comes out pale in patches. Press a little firmer.',
        );
  },
  'REC-04': ({ name, figure, formatter }) =>
    saying(
      `${name('placement')} is set to ${formatter.number(figure('typed'), 1)} °${name('unit')}.`,
      `That makes sense in °${name('meant')} only: in °${name('unit')} it would ${name('unit') === 'C' ? 'burn the blank' : 'leave the print blank'}. Check which scale the press shows.`,
    ),
  'REC-05': ({ name, figure, formatter }) =>
    saying(
      `${name('placement')} has no preheat.`,
      `Moisture in ${name('blank')} turns to steam under the platen and leaves blurs and pale spots. Press it bare for about ${formatter.number(figure('seconds'), 0)} s and let it cool before laying the transfer.`,
    ),
  'REC-06': ({ finding, name }) =>
    finding.variant === 'none'
      ? saying(
          `${name('placement')} is pressed without protective paper.`,
          'Dye gas gets into the platen and the pad and marks the next pieces. Lay fresh plain paper above and below.',
        )
      : saying(
          `${name('placement')} is pressed with ${paperWords(finding.variant ?? '')}.`,
          'It keeps steam in or carries dye from the last press to the next. Take fresh plain paper for every press: it lets moisture out and catches stray dye.',
        ),
  'REC-12': ({ finding, name, figure, formatter }) =>
    finding.variant === 'never'
      ? saying(
          `This recipe has never been pressed on ${name('blank')}.`,
          `Losses are set to ${formatter.share(figure('scrap'))} until you have counts of your own. Press a test or two first.`,
        )
      : saying(
          `This recipe has been pressed on ${name('blank')} ${formatter.count(figure('proven'), 'time')}.`,
          `From ${formatter.number(figure('few'), 0)} good presses on it counts as known. Look at the first pieces closely.`,
        ),
} satisfies Record<string, Say>;
