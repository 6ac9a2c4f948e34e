import type { SafetyFacts } from '@/shared/facts/safetyFacts';
import { lawWords } from './lawWords';
import { stallPowerWords } from './stallPowerWords';
import { type WordingsOf, wording } from './wording';

const splitUp =
  'Asked for more it fails in the middle of a run. Split the job over days, or take a press rated for it.';

/** Words of the findings about electricity, safety and law. These give bearings, never advice. */
export const safetyWords = {
  ...lawWords,
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
  'ELE-02': () =>
    wording(
      'The press hangs on an extension lead.',
      'Leads get hot under a press, and the press gets less than its power. Plug it straight into the wall. Ask a licensed electrician.',
    ),
  ...stallPowerWords,
  'ELE-04': ({ variant, facts }, formatter) => {
    const figures = (one: string, per: string) =>
      `${facts.machine} is asked for ${formatter.count(Math.ceil(facts.planned - 1e-9), one)} ${per}; its maker rates it for ${formatter.number(facts.rated)}.`;
    switch (variant) {
      case 'presses':
        return wording(figures('press', 'a day'), splitUp);
      case 'hours':
        return wording(
          `${facts.machine} is asked to be hot for ${formatter.hours(facts.planned)} a day; its maker rates it for ${formatter.hours(facts.rated)}.`,
          splitUp,
        );
      default:
        return wording(
          figures('sheet', 'by this job'),
          'That is for a month: past it heads and rollers wear out in the middle of a run. Split the job, or have some printed.',
        );
    }
  },
  'SAF-02': ({ facts }, formatter) =>
    wording(
      `The press works alone for ${formatter.number(facts.minutes, 1)} min at ${facts.placement}.`,
      `Past ${formatter.number(facts.most, 0)} min a hot press left alone is a fire nobody sees. Stay in the room, and keep gloves at hand.`,
    ),
  'SAF-03': () =>
    wording(
      'The safety data sheets of ink and coatings are not on file.',
      'They say what to do about fumes, spills and skin. Ask the seller for them; the form is the same everywhere (GHS of the United Nations).',
    ),
} satisfies WordingsOf<SafetyFacts>;
