import { type Say, saying } from './sayings';

/** Words of the findings about electricity, safety and law. These give bearings, never advice. */
export const safetyWords = {
  'ELE-01': ({ finding, figure, formatter }) => {
    const watts = `${formatter.number(figure('watts'), 0)} W`;
    switch (finding.variant) {
      case 'unknown':
        return saying(
          `The circuit your press hangs on is not entered.`,
          `Press and printer take ${watts} together, and whether it bears that nobody can say. Enter its volts, its breaker and what else hangs on it. Ask a licensed electrician.`,
        );
      case 'over':
        return saying(
          `Everything on the circuit takes ${watts}; its breaker holds ${formatter.number(figure('full'), 0)} W.`,
          'It will trip in the middle of a press, or the wiring gets hot. Move the press or the other devices to another circuit. Ask a licensed electrician.',
        );
      default:
        return saying(
          `Everything on the circuit takes ${watts}, above ${formatter.number(figure('mark'), 0)} W.`,
          `For hours of use a circuit of ${formatter.number(figure('volts'), 0)} V and ${formatter.number(figure('amps'), 0)} A is best kept under four fifths of its ${formatter.number(figure('full'), 0)} W. Move something to another circuit. Ask a licensed electrician.`,
        );
    }
  },
  'SAF-01': ({ finding }) => {
    switch (finding.variant) {
      case 'foodOven':
        return saying(
          'An oven that cooks food is used for goods.',
          'Dye and coating give off fumes that settle on its walls and get into food. Use an oven kept for goods alone. For rules on fumes ask your local authority.',
        );
      case 'closed':
        return saying(
          'The room is not ventilated.',
          'Hot dye and coating give off fumes, and hours of them hurt. Open a window with a fan before you press. For rules on fumes ask your local authority.',
        );
      default:
        return saying(
          'Nobody has said whether the room is ventilated.',
          'Hot dye and coating give off fumes. Make sure air comes in and goes out, and note it for the workshop. For rules on fumes ask your local authority.',
        );
    }
  },
  'LAW-01': ({ finding }) => {
    switch (finding.variant) {
      case 'removed':
        return saying(
          'The sewn label is to be taken out.',
          'In many places fibres, origin, maker and care must stay readable on what is sold. Leave it in. Ask your local authority.',
        );
      case 'covered':
        return saying(
          'The sewn label is to be covered.',
          'In many places fibres, origin, maker and care must stay readable on what is sold. Leave it free. Ask your local authority.',
        );
      default:
        return saying(
          'Nobody has said what happens to the sewn label.',
          'In many places fibres, origin, maker and care must stay readable on what is sold. Plan to leave it as it is. Ask your local authority.',
        );
    }
  },
  'LAW-02': ({ name }) =>
    saying(
      `${name('blank')} is meant for children.`,
      'Goods for children may need tests, a certificate and a lasting mark that says who made them, where, when and in which batch. Find out before you sell. Ask your local authority.',
    ),
  'LAW-05': ({ name }) =>
    saying(
      `Whether prices on ${name('channel')} are with or without tax is not set.`,
      'Tax that nobody added comes out of your own pocket. Choose how tax is handled there before you quote. In some places set-up and artwork are taxed too: ask your local authority.',
    ),
} satisfies Record<string, Say>;
