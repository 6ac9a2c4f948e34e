import { type Say, saying } from './sayings';

/** Words of the findings about time. */
export const timeWords = {
  'TIM-01': ({ finding, name, figure, formatter }) => {
    const needed = formatter.hours(figure('neededHours'));
    const wanted = formatter.day(name('wantedOn'));
    if (finding.variant === 'unknown') {
      return saying(
        `The job needs ${needed} by ${wanted}, and your free hours are not set.`,
        'Nobody can say whether it fits. Enter the hours you are free for the bench on each day of the week.',
      );
    }
    const sentence = `The job needs ${needed}; before ${wanted} you have ${formatter.hours(figure('freeHours'))} free.`;
    switch (finding.variant) {
      case 'never':
        return saying(
          sentence,
          'With these free hours it would take longer than two years. Free some hours, or leave the job.',
        );
      case 'over':
        return saying(
          sentence,
          `It cannot be done in time. The earliest honest day is ${formatter.day(name('honest'))}; or free more hours and charge for the rush.`,
        );
      default:
        return saying(
          sentence,
          `One bad evening and it is late. ${formatter.day(name('honest'))} would leave room.`,
        );
    }
  },
  'TIM-02': ({ finding, name, figure, formatter }) => {
    if (finding.variant === 'unknown') {
      return saying(
        `How long ${name('blank')} takes to arrive is not set.`,
        'So nobody can say when it must be ordered. Enter the supplier’s working days from order to arrival.',
      );
    }
    const latest = formatter.day(name('latest'));
    const lead = formatter.count(figure('lead'), 'working day');
    const later =
      name('later') === '' ? 'Agree on a later day' : `Agree on ${formatter.day(name('later'))} or later`;
    switch (finding.variant) {
      case 'passed':
        return saying(
          `Blanks had to be ordered by ${latest} to be ready on ${formatter.day(name('wantedOn'))}.`,
          `With ${lead} to arrive they come too late for the bench. ${later}, or find a faster supplier.`,
        );
      case 'soon':
        return saying(
          `Order the blanks by ${latest}.`,
          `They take ${lead} to arrive, and after that day ${formatter.day(name('wantedOn'))} cannot be kept. ${later}, or order now.`,
        );
      default:
        return saying(
          `Order the blanks by ${latest}.`,
          `They take ${lead} to arrive; that day leaves the bench its time and a day to spare before ${formatter.day(name('wantedOn'))}.`,
        );
    }
  },
} satisfies Record<string, Say>;
