import type { TimeFacts } from '@/shared/facts/timeFacts';
import { type WordingsOf, wording } from './wording';

/** Words of the findings about time. */
export const timeWords = {
  'TIM-01': ({ variant, facts }, formatter) => {
    if (variant === 'heatings') {
      return wording(
        `The press is heated up ${formatter.count(facts.sessions, 'time')}, for no free block holds the work in one piece.`,
        `That is ${formatter.count(facts.more, 'time')} more than the price has: ${formatter.number(facts.minutes, 0)} min and ${formatter.number(facts.inkMl, 1)} mL of ink. Price it so, or make a block longer.`,
      );
    }
    const wanted = formatter.day(facts.wantedOn);
    if (variant === 'runLate') {
      return wording(
        `${facts.job} is done on ${formatter.day(facts.doneOn)}, ${formatter.count(facts.days, 'day')} after the day it is wanted.`,
        `It is wanted on ${wanted}. Give the run blocks of its own before that, make what can wait in another run, or agree on a later day.`,
      );
    }
    if (variant === 'noBlock') {
      return wording(
        'No free block is long enough to heat up the press.',
        `Setting up, a single piece and cleaning down take ${formatter.hours(facts.sessionHours)}, and your longest block is ${formatter.hours(facts.longestHours)}. Make a block longer to be ready by ${wanted}.`,
      );
    }
    const needed = formatter.hours(facts.neededHours);
    if (variant === 'unknown') {
      return wording(
        `The job needs ${needed} by ${wanted}, and your free hours are not set.`,
        'Nobody can say whether it fits. Enter when you are free for the bench on each day of the week.',
      );
    }
    const sentence = `The job needs ${needed}; before ${wanted} you have ${formatter.hours(facts.freeHours)} free.`;
    switch (variant) {
      case 'never':
        return wording(
          sentence,
          'With these free hours it would take longer than two years. Free some hours, or leave the job.',
        );
      case 'over':
        return wording(
          sentence,
          `It cannot be done in time. The earliest day that can be kept is ${formatter.day(facts.honest)}, with a working day to spare; or free more hours and charge for the rush.`,
        );
      case 'blocks':
        return wording(
          sentence,
          `The hours are enough, but the press has to stay hot in one piece, and no block long enough comes in time. ${facts.honest === '' ? 'Make a block longer, or press in several sessions.' : `${formatter.day(facts.honest)} can be kept; or make a block longer, or press in several sessions.`}`,
        );
      default:
        return wording(
          sentence,
          `One bad evening and it is late. ${facts.honest === '' ? 'Free more hours.' : `${formatter.day(facts.honest)} would leave room.`}`,
        );
    }
  },
  'TIM-02': ({ variant, facts }, formatter) => {
    if (variant === 'unknown') {
      return wording(
        `How long ${facts.blank} takes to arrive is not set.`,
        'So nobody can say when it must be ordered. Enter the supplier’s working days from order to arrival.',
      );
    }
    const latest = formatter.day(facts.latest);
    const lead = formatter.count(facts.lead, 'working day');
    const count =
      facts.uncounted === ''
        ? ''
        : ` Nobody has counted what lies at home of ${facts.uncounted}; where that is enough, nothing need be ordered.`;
    const agree = (later: string) =>
      later === '' ? 'Agree on a later day' : `Agree on ${formatter.day(later)} or later`;
    switch (variant) {
      case 'passed':
        return wording(
          `Blanks had to be ordered by ${latest} to be ready on ${formatter.day(facts.wantedOn)}.`,
          `With ${lead} to arrive they come too late for the bench. ${agree(facts.later)}, or find a faster supplier.${count}`,
        );
      case 'soon':
        return wording(
          `Order the blanks by ${latest}.`,
          `They take ${lead} to arrive, and after that day ${formatter.day(facts.wantedOn)} cannot be kept. ${agree(facts.later)}, or order now.${count}`,
        );
      default:
        return wording(
          `Order the blanks by ${latest}.`,
          `They take ${lead} to arrive; that day leaves the bench its time and a day to spare before ${formatter.day(facts.wantedOn)}.${count}`,
        );
    }
  },
  'TIM-03': ({ variant, facts }, formatter) => {
    const due = `by ${formatter.day(facts.approveBy)} to be ready on ${formatter.day(facts.wantedOn)}`;
    const now =
      facts.ready === ''
        ? 'Ask again, and agree on another day.'
        : `Ask again; if it came today, ${formatter.day(facts.ready)} could be kept.`;
    switch (variant) {
      case 'approval':
        return wording(
          `The approval had to be there ${due}.`,
          `Every day the proof waits moves delivery. ${now}`,
        );
      case 'deposit':
        return wording(
          `The deposit had to be there ${due}.`,
          `Nothing is ordered or printed without it, so every day it waits moves delivery. ${now}`,
        );
      default:
        return wording(
          `Approval and deposit had to be there ${due}.`,
          `Nothing is ordered or printed without them, so every day they wait moves delivery. ${now}`,
        );
    }
  },
  'TIM-05': ({ variant, facts }, formatter) => {
    switch (variant) {
      case 'dry':
        return wording(
          'No time is planned for the sheets to dry.',
          `Wet ink smears when it is taped and steams under the press. Add ${formatter.number(facts.minutes, 0)} min after printing.`,
        );
      case 'cool':
        return wording(
          'No time is planned for the pieces to cool.',
          `Hard goods stay hot for long and burn fingers and bags. Add ${formatter.number(facts.minutes, 0)} min before packing.`,
        );
      default:
        return wording(
          `Pieces are with the customer ${formatter.hours(facts.hours)} after the press.`,
          `Dye is fixed once it is cool; glue, paint or vinyl parts are not. Where there are any, say: no wash for ${formatter.hours(facts.least)}.`,
        );
    }
  },
  'TIM-04': ({ variant, facts }, formatter) =>
    wording(
      `A session takes ${formatter.hours(facts.hours)} in one piece.`,
      variant === 'tooLong'
        ? `After ${formatter.hours(facts.most)} hands get slow and pieces get spoiled. Split the work over days.`
        : `Past ${formatter.hours(facts.most)} without a break mistakes come. Plan 52 minutes of work to an hour, or split it over days.`,
    ),
} satisfies WordingsOf<TimeFacts>;
