import { minutesWords } from '@/app/_words/minutesWords';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { shortDay } from '@/app/_words/orders/orderDayWords';
import type { YearStanding } from '@/lib/year/yearStanding';
import { LONG_DAY_MINUTES } from '@/shared/tables/longDay';

/** Said while hours are typed; null where nothing is to be asked. */
export function hoursQuestion(minutes: number | null): string | null {
  if (minutes === null) return null;
  if (minutes === 0) return 'No time is no entry: it would change nothing. Say how long it was, or leave it.';
  if (minutes > LONG_DAY_MINUTES)
    return 'That is a whole night and more. It would lower the pay of every hour of the year. Is it right?';
  return null;
}

/** @returns what of the year looks like a slip, each a sentence with what to do. */
export function doubtWords(
  { doubtful, longDays, stallUntoldMinor, currency }: YearStanding,
  today: string,
  locale: string,
): readonly string[] {
  return [
    ...doubtful.map(({ first }) => {
      const amount = minorMoney(Math.abs(first.amountMinor), first.currency, locale);
      const what = first.what === '' ? '' : ` for ${first.what}`;
      return `${amount}${what} of ${shortDay(first.day, today, locale)} may stand here twice. If it is one bill, take one of them back.`;
    }),
    ...longDays.map(
      ({ day, minutes }) =>
        `${minutesWords(minutes, locale)} are noted for ${shortDay(day, today, locale)}. All of it counts; take back what is too much.`,
    ),
    ...(stallUntoldMinor === 0
      ? []
      : [
          `Plans of this year’s stall days reckoned ${minorMoney(stallUntoldMinor, currency, locale)} more for stall, drive and the rest than is noted as spent on stalls. Note what was paid.`,
        ]),
  ];
}

/** @returns money in other currencies, a sentence each. */
export const otherCurrencyWords = ({ other }: YearStanding, locale: string): readonly string[] =>
  other.map(
    ({ currency, cameMinor, wentMinor }) =>
      `In ${currency}, in no sum: ${minorMoney(cameMinor, currency, locale)} came, ${minorMoney(wentMinor, currency, locale)} went.`,
  );

/** @returns how hours of the year are known, for the line under them. */
export function hourSources({ hours }: YearStanding, locale: string): readonly string[] {
  const of = (from: string) =>
    hours.reduce((sum, row) => (row.from === from && !row.isInClose ? sum + row.minutes : sum), 0);
  const said = (minutes: number, how: string) =>
    minutes === 0 ? [] : [`${minutesWords(minutes, locale)} ${how}`];
  return [
    ...said(of('noted'), 'noted'),
    ...said(of('close'), 'by closes of stall days'),
    ...said(of('closePlan'), 'at the bench for stall days, as planned'),
    ...said(of('standard'), 'of closed runs, as planned: nobody noted them'),
  ];
}
