import type { SafetyFacts } from '@/shared/facts/safetyFacts';
import { type WordingsOf, wording } from './wording';

/** Words of the findings about electricity, safety and law. These give bearings, never advice. */
export const safetyWords = {
  'ELE-01': ({ variant, facts }, formatter) => {
    const watts = `${formatter.number(facts.watts, 0)} W`;
    switch (variant) {
      case 'shared':
        return wording(
          'The press hangs on a circuit that may not bear it.',
          `Press and printer take ${watts} together, and with a kettle the breaker trips in the middle of a press. Enter its volts, its breaker and what else hangs on it. Ask a licensed electrician.`,
        );
      case 'over':
        return wording(
          `Everything on the circuit takes ${watts}; its breaker holds ${formatter.number(facts.full, 0)} W.`,
          'It will trip in the middle of a press, or the wiring gets hot. Move the press or the other devices to another circuit. Ask a licensed electrician.',
        );
      default:
        return wording(
          `Everything on the circuit takes ${watts}, above ${formatter.number(facts.mark, 0)} W.`,
          `For hours of use a circuit of ${formatter.number(facts.volts, 0)} V and ${formatter.number(facts.amps, 0)} A is best kept under four fifths of its ${formatter.number(facts.full, 0)} W. Move something to another circuit. Ask a licensed electrician.`,
        );
    }
  },
  'SAF-01': ({ variant }) => {
    switch (variant) {
      case 'foodOven':
        return wording(
          'An oven that cooks food is used for goods.',
          'Dye and coating give off fumes that settle on its walls and get into food. Use an oven kept for goods alone. For rules on fumes ask your local authority.',
        );
      default:
        return wording(
          'The room is not ventilated.',
          'Hot dye and coating give off fumes, and hours of them hurt. Open a window with a fan before you press. For rules on fumes ask your local authority.',
        );
    }
  },
  'LAW-01': ({ variant }) => {
    switch (variant) {
      case 'removed':
        return wording(
          'The sewn label is to be taken out.',
          'In many places fibres, origin, maker and care must stay readable on what is sold. Leave it in. Ask your local authority.',
        );
      default:
        return wording(
          'The sewn label is to be covered.',
          'In many places fibres, origin, maker and care must stay readable on what is sold. Leave it free. Ask your local authority.',
        );
    }
  },
  'LAW-02': ({ facts }) =>
    wording(
      `${facts.blank} is meant for children.`,
      'Goods for children may need tests, a certificate and a lasting mark that says who made them, where, when and in which batch. Find out before you sell. Ask your local authority.',
    ),
  'LAW-05': ({ facts }) =>
    wording(
      `Whether prices on ${facts.channel} are with or without tax is not set.`,
      'Tax that nobody added comes out of your own pocket. Choose how tax is handled there before you quote. In some places set-up and artwork are taxed too: ask your local authority.',
    ),
} satisfies WordingsOf<SafetyFacts>;
