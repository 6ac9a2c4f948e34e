import type { TextContext } from '@/app/_words/formatter';
import { minutesWords } from '@/app/_words/minutesWords';
import { daysWords, nearDayWords } from '@/app/_words/orders/nearDayWords';
import { spelledNumber } from '@/app/_words/spelledNumber';
import { usableLocale } from '@/app/_words/usableLocale';
import type { IfAllCome } from '@/lib/calendar/ifAllCome';
import type { WeekAhead } from '@/lib/calendar/weeksAhead';
import { addDays, weekdayOf } from '@/shared/days';
import { formatNumber } from '@/shared/formatNumber';

/** A week of the bench in words. */
interface WeekWords {
  readonly name: string;
  /** What of it is taken: “7 of 9 h”. */
  readonly taken: string;
  /** The parts, spoken where the bar is seen. */
  readonly parts: string;
  readonly isOver: boolean;
}

export function weekWords(
  { monday, free, accepted, quoted }: WeekAhead,
  today: string,
  { locale }: TextContext,
): WeekWords {
  const place = usableLocale(locale);
  const hours = (minutes: number) => formatNumber(minutes / 60, place, { maxDecimals: 1 });
  const used = accepted + quoted;
  const said = (minutes: number, what: string) =>
    minutes === 0 ? [] : [`${what} ${minutesWords(minutes, place)}`];
  const over = used - free;
  return {
    name: isThisWeek(monday, today) ? 'this week' : dayOfWeekWords(monday, today, locale),
    taken:
      free === 0 && used === 0
        ? 'not free'
        : used === 0
          ? `${hours(free)} h free`
          : `${hours(used)} of ${hours(free)} h${over > 0 ? `, ${hours(over)} h over` : ''}`,
    parts: [
      ...said(accepted, 'accepted'),
      ...said(quoted, 'asked or quoted'),
      ...said(Math.max(0, -over), 'free'),
    ].join(', '),
    isOver: over > 0,
  };
}

/**
 * What would be if every open quote came, in one sentence: plain beginning, bold end.
 *
 * @param nameOf what an order is called
 */
export function ifAllComeWords(
  found: IfAllCome | null,
  { weeks, open }: WeeksAsked,
  nameOf: (orderId: string) => string,
  today: string,
  { locale }: TextContext,
): readonly [string, string] {
  const place = usableLocale(locale);
  const time = (minutes: number) => minutesWords(minutes, place);
  if (found === null) {
    const free = weeks.reduce((sum, week) => sum + Math.max(0, week.free - week.accepted), 0);
    const start =
      open === 0 ? 'Nothing is asked or quoted;' : 'Of what is asked or quoted no job can be planned yet;';
    return [start, `${time(free)} are free in four weeks`];
  }
  const { quotes, late, lateAnyway, until } = found;
  const start = ifTheyComeWords(quotes);
  const already =
    lateAnyway.length === 0
      ? ''
      : `; ${spelledNumber(lateAnyway.length)} ${lateAnyway.length === 1 ? 'is' : 'are'} late already`;
  const [first, ...others] = late;
  if (first !== undefined) {
    const name = nameOf(first.id);
    const end =
      others.length > 0
        ? `${spelledNumber(late.length)} would be late, ${name} among them`
        : first.planned.kind === 'planned'
          ? `${name} would be ${daysWords(first.daysLate)} late`
          : `${name} fits into no block of your week`;
    return [start, `${end}${already}`];
  }
  if (until !== null && until.needed > until.free) {
    const day = nearDayWords(until.day, today, locale);
    return [start, `${time(until.needed - until.free)} are missing until ${day}${already}`];
  }
  return [start, `all of it fits: ${time(found.minutes)} of work${already}`];
}

// Helpers

interface WeeksAsked {
  readonly weeks: readonly WeekAhead[];
  /** How many orders are asked or quoted, planned or not. */
  readonly open: number;
}

function ifTheyComeWords(quotes: number): string {
  if (quotes === 1) return 'If the open one comes,';
  return `If ${quotes === 2 ? 'both' : `all ${spelledNumber(quotes)}`} open ones come,`;
}

const isThisWeek = (monday: string, today: string): boolean => addDays(today, -weekdayOf(today)) === monday;

/** Of a week its Monday, without saying that it is one. */
const dayOfWeekWords = (monday: string, today: string, locale: string): string =>
  nearDayWords(monday, today, locale).replace(/^Mon /, '');
