import type { OwnPower, SafetyFacts } from '@/shared/facts/safetyFacts';
import { type WordingsOf, wording } from './wording';

const sourceWords: Readonly<Record<OwnPower, string>> = { battery: 'battery', generator: 'generator' };

const whomToAsk = 'Ask a licensed electrician, and keep to the local codes.';

/** Words of the finding about power at a stall. */
export const stallPowerWords = {
  'ELE-03': ({ variant, facts }, formatter) => {
    const watts = (value: number) => `${formatter.number(value, 0)} W`;
    switch (variant) {
      case 'noSource':
        return wording(
          'There is no power at the stall, and a press is to be used there.',
          'It stays cold. Press at home, or say where the power comes from.',
        );
      case 'askSource':
        return wording(
          'Where the power at the stall comes from is not said.',
          `A source that is too weak cuts out in the middle of a press. Ask the organiser, or press at home. ${whomToAsk}`,
        );
      case 'pressGone':
        return wording(
          'A press that is to be used at the stall is not in your workshop any more.',
          'What it takes is not counted here. Take it off the list, or choose another.',
        );
      case 'noPower':
        return wording(
          `The power of ${facts.presses} is not entered.`,
          'Whether the source bears it cannot be told. Enter what stands on its plate among your presses.',
        );
      case 'askWatts':
        return wording(
          `How many watts the ${sourceWords[facts.source]} gives without a break is not said.`,
          `Do not press at the stall unless ${watts(facts.watts)} are guaranteed: with less it cuts out in the middle of a press. ${whomToAsk}`,
        );
      default:
        return wording(
          `The ${sourceWords[facts.source]} gives ${watts(facts.guaranteed)} without a break, and pressing takes ${watts(facts.watts)}.`,
          `It cuts out in the middle of a press, or gets hot. Do not press at the stall unless ${watts(facts.watts)} are guaranteed. ${whomToAsk}`,
        );
    }
  },
} satisfies WordingsOf<Pick<SafetyFacts, 'ELE-03'>>;
