import { elementNames } from '@/app/_words/elementNames';
import type { Formatter } from '@/app/_words/formatter';
import { listed } from '@/app/_words/listed';
import { hoursWords, minutesWords } from '@/app/_words/minutesWords';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { RunFacts } from '@/lib/making/runFacts';
import type { ActualTrouble } from '@/lib/variances/actualTroubles';
import type { RunResult } from '@/lib/variances/runResult';
import type { SinceClosed } from '@/lib/variances/sinceClosed';
import { toMinor } from '@/shared/money';
import type { WorkElement } from '@/shared/schemas/making/runEvents';

/** What the maker may choose time for. */
export const elementChoices = Object.entries(elementNames).map(([value, label]) => ({
  value: value as WorkElement,
  label,
}));

/** What is wrong, what it causes, how to mend it. */
export function troubleWords(trouble: ActualTrouble, formatter: Formatter, locale: string): string {
  switch (trouble.what) {
    case 'moreLostThanStarted':
      return `${trouble.lost} pieces are noted as lost, but only ${trouble.started} went into the first press. The share of scrap is too high with them: take back what was noted twice.`;
    case 'moreCameThanUsed':
      return `${trouble.came} pieces came of ${trouble.used} blanks. The blanks look cheaper than they were: correct how many were used.`;
    case 'moreCameThanStarted':
      return `${trouble.came} pieces came out, but only ${trouble.started} are noted at the first press. As many blanks count as used as came out: type how many it were if that is wrong.`;
    case 'moreThanLaidOut':
      return `${trouble.started} of ${listed(trouble.sizes)} went into the first press, but only ${trouble.laidOut} were laid out. They all count as used: take back what was noted twice, or leave it where more were fetched.`;
    case 'otherCurrency':
      return `An amount is noted in ${trouble.noted}, but this run is reckoned in ${trouble.run}. It counts for nothing: type it again in ${trouble.run}.`;
    case 'noTime':
      return 'A time of 0 min is noted. It makes that work look free: take it back, or type how long it took.';
    case 'wholeNight':
      return `The clock ran for ${minutesWords(trouble.minutes, locale)} in one go. It counts as work and lowers your pay an hour: take it back and type how long it took if it was left running.`;
    case 'longNote':
      return `${minutesWords(trouble.minutes, locale)} are noted in one go. They count as work and lower your pay an hour: take them back and type how long it took if a night is in them, or note each day on its own.`;
    case 'longDay':
      return `${minutesWords(trouble.minutes, locale)} are noted on ${formatter.day(trouble.day)}. Nobody works so long: your pay an hour looks lower than it was. Take back what was noted twice, or note it on its own day.`;
    case 'withoutCause':
      return `${formatter.count(trouble.pieces, 'piece was', 'pieces were')} scrapped without a cause. What keeps going wrong stays hidden: say why each was lost.`;
    case 'noneUsed':
      return `No ${trouble.of} are noted as used. The run looks cheaper than it was: correct how many there were.`;
    default:
      return trouble satisfies never;
  }
}

export const notFrozen = 'It was not begun with frozen figures, so there is nothing to hold it against.';

/** “37 good, 4 scrapped, 8 h 24 min; closed Dec 7, 2026” */
export function lineWords(
  { steps, isClosed }: Pick<RunFacts, 'steps' | 'isClosed'>,
  { made, actuals }: Pick<RunResult, 'made' | 'actuals'>,
  formatter: Formatter,
  locale: string,
): string {
  const sum = (of: 'good' | 'seconds' | 'scrap') => (made ?? []).reduce((all, one) => all + one[of], 0);
  const seconds = sum('seconds');
  const closedOn = steps.findLast(({ body }) => body.step.what === 'closed')?.body.day;
  const time = hoursWords(actuals.labour.quantity, locale);
  return [
    [
      made === null ? 'No piece is noted' : `${sum('good')} good, ${sum('scrap')} scrapped`,
      ...(seconds > 0 ? [formatter.count(seconds, 'second')] : []),
      actuals.labour.quantityFrom === 'standard' ? `${time} as planned, none noted` : time,
    ].join(', '),
    isClosed && closedOn !== undefined ? `closed ${formatter.day(closedOn)}` : 'not closed yet',
  ].join('; ');
}

/** “2 spares and 1 second lie in stock at 17.20, their bought-in cost. They bring no price in yet.” */
export function sparesWords(
  { spares: { pieces, seconds, cost }, currency }: Pick<RunResult, 'spares' | 'currency'>,
  formatter: Formatter,
  locale: string,
): string {
  const money = minorMoney(toMinor(cost, currency), currency, locale);
  const many = listed([
    ...(pieces === 0 ? [] : [`${formatter.count(pieces, 'piece')} more than ordered`]),
    ...(seconds === 0 ? [] : [formatter.count(seconds, 'second')]),
  ]);
  return pieces + seconds === 1
    ? `${many} lies in stock at ${money}, its bought-in cost. It brings no price in yet.`
    : `${many} lie in stock at ${money}, their bought-in cost. They bring no price in yet.`;
}

/** “Prices came in since it was closed, and count here: 1 delivery and 2 amounts typed.” */
export function sinceClosedWords({ deliveries, amounts }: SinceClosed, formatter: Formatter): string {
  const came = listed([
    ...(deliveries === 0 ? [] : [formatter.count(deliveries, 'delivery', 'deliveries')]),
    ...(amounts === 0 ? [] : [formatter.count(amounts, 'amount typed', 'amounts typed')]),
  ]);
  return `${deliveries > 0 ? 'Prices' : 'Amounts'} came in since it was closed, and count here: ${came}.`;
}

/** Pay and profit that rest on a time which is hardly so. */
export const doubtTable = {
  head: 'Doubtful',
  why: 'Pay and profit rest on a time that is hardly so: see below.',
  pay: 'an hour, if that time were right',
} as const;

/** What is asked of a time that is hardly so. */
export const timeTable = {
  label: 'Time in minutes',
  few: (minutes: string) =>
    `That is ${minutes} min. Hours are typed as minutes here: an hour and a half is 90.`,
  none: 'No time makes that work look free. Leave it out where it took none.',
  wholeNight: 'That is a whole night. It lowers your pay an hour: check whether a clock was left running.',
  longDay: 'Nobody works more than 16 h in one go. It lowers your pay an hour: note each day on its own.',
} as const;
