import { clockWords } from '@/app/_words/clockWords';
import type { AnswerWords } from '@/app/_words/docket/answerWords';
import type { Formatter } from '@/app/_words/formatter';
import { hoursWords } from '@/app/_words/minutesWords';
import { decisionWords } from '@/app/_words/stall/closedWords';
import { timesFeeWords } from '@/app/_words/stall/feeWords';
import { askedForWords, nextTimeWords } from '@/app/_words/stall/notedWords';
import { dayOfWeather } from '@/app/_words/stall/weatherWords';
import type { BridgeStep } from '@/lib/stall/evening/bridge';
import { type LostStretch, thinBelow } from '@/lib/stall/evening/lostSales';
import type { Evening } from '@/lib/stall/evening/reconcile';
import type { Lesson } from '@/lib/stall/evening/teaches';
import { wishesKept } from '@/lib/stall/evening/wishesKept';
import type { PastDay } from '@/lib/stall/plan/demand/pastDay';
import { fromMinor, type MinorUnits } from '@/shared/money';
import { goodsName } from './goodsName';

export const bridgeWords: Readonly<Record<BridgeStep, string>> = {
  pieces: 'pieces and mix',
  sets: 'sets',
  prices: 'other prices',
  fees: 'fees',
  given: 'given away',
  damaged: 'spoiled',
  missing: 'missing',
  hours: 'hours',
  spent: 'spent from the tin',
  tin: 'the tin',
  cashRounding: 'coins rounded',
};

/** What is there and nobody said where from. */
export const foundWords = (pieces: string): string => `found, ${pieces}: not said where from`;

/** “a dry day”, or the mean of all weathers. */
export const startWords = (weather: string | null): string =>
  weather === null ? 'the plan, all weathers' : `the plan, ${weather}`;

export function resultAnswer({ result, bridge, rows, plan }: Evening, { number }: Formatter): AnswerWords {
  if (result.profit === null) {
    return rows.some(({ left }) => left === null)
      ? { key: 'Not known yet', after: ': count the goods' }
      : { key: 'Not known', after: ': the plan lacks a cost' };
  }
  const profit = number(result.profit, 0);
  if (bridge === null) return { key: profit, after: ' is left' };
  const planned = number(bridge.from, 0);
  return bridge.weather === null
    ? { key: profit, after: ` where the plan had ${planned}` }
    : {
        key: profit,
        after: ` for the ${planned} of ${dayOfWeather({ label: bridge.weather, days: plan.days.length })}`,
      };
}

export function decideAnswer(
  { result }: Evening,
  past: readonly PastDay[],
  decision: keyof typeof decisionWords | null,
): AnswerWords {
  const key = decision === null ? 'Go again?' : decisionWords[decision];
  const known = past.flatMap(({ payPerHour }) => payPerHour ?? []);
  if (result.payPerHour === null || known.length === 0) return { key };
  const better = known.filter((pay) => pay > (result.payPerHour ?? 0)).length;
  const of = known.length + 1;
  const place = better === 0 ? 'the best' : better === known.length ? 'the worst' : `number ${better + 1}`;
  return { key, after: `: ${place} hour of ${of} fairs` };
}

/** What a lesson says, and the words it is noted in. */
export function lessonWords(
  lesson: Lesson,
  { plan }: Evening,
  { count }: Formatter,
  locale: string,
): { readonly key: string; readonly what: string; readonly why: string } {
  if (lesson.kind === 'asked') {
    return {
      key: `asked ${lesson.words}`,
      what: askedForWords(lesson, count),
      why: 'none along',
    };
  }
  const { row, next, stretches, leftOut } = lesson;
  const gone = stretches.map((stretch) => goneWords(stretch, locale)).join('. ');
  const asked = row.asked === 0 ? '' : ` Asked for then: ${count(row.asked, 'time')}.`;
  const left = leftOut === null ? '' : ` ${leftOutWords[leftOut]}`;
  return {
    key: row.key,
    what: nextTimeWords(goodsName(plan, row.goods), { next, brought: row.brought }),
    why: `${gone}.${asked}${left}`,
  };
}

/** What is reckoned counts as wanted in the forecasts that rest on this day, unless the maker leaves it out. */
export const leaveOutWords = (isLeftOut: boolean): string =>
  isLeftOut ? 'Learn from it after all' : 'Do not learn from it';

const leftOutWords = {
  said: 'That is left out of what the next plans learn.',
  thin: `Of fewer than ${thinBelow.pieces} pieces or ${thinBelow.minutes} min the next plans learn nothing.`,
} as const;

/** How the lost sales of goods that sold out are reckoned, for a first rush makes them large. */
function goneWords(
  { goneAtMinute, before, withinMinutes, isPutOutAgain, lost }: LostStretch,
  locale: string,
): string {
  const gone = goneAtMinute === null ? 'All gone' : `Gone at ${clockWords(goneAtMinute, locale)}`;
  const until = isPutOutAgain ? ' until more was put out' : '';
  if (withinMinutes === null || lost < 0.5) return `${gone}${until}`;
  const more = `about ${Math.round(lost)} more${isPutOutAgain ? '' : ' by the end'}`;
  return `${gone}${until}: ${before} before the last took ${Math.round(withinMinutes)} min, at that pace ${more}`;
}

export const leadWords = (words: string): string => (words === '' ? 'Somebody wants something made' : words);

/** Why a close was not kept. */
export const notClosedWords = (why: string): string => `The day is not closed. ${why}`;

/** @returns when a day was closed and as which paper: “Closed 28 Nov 2026, 18:05, number 1” */
export const closedOnWords = (
  { day, minute }: { readonly day: string; readonly minute: number },
  number: string,
  { day: dayText }: Pick<Formatter, 'day'>,
  locale: string,
): string => `Closed ${dayText(day)}, ${clockWords(minute, locale)}, number ${number}.`;

/** What a second close does. */
export const correctionWords =
  'Closing again takes the place of the close before: its stock is taken back and noted anew.';

/** What was counted beside sales, and how the takings stand to the fee of the place. */
export function besideWords(
  { count, money, plan }: Evening,
  { number, ...say }: Formatter,
): readonly string[] {
  const takings = fromMinor(money.gross as MinorUnits, plan.currency);
  const timesFee = timesFeeWords('Takings', takings, plan.costs.stallFee, { number });
  const { kept, withoutWords } = wishesKept(count.askedFor);
  return [
    ...(timesFee === null ? [] : [timesFee]),
    ...(count.visitors > 0 ? [`${say.count(count.visitors, 'visitor')} counted.`] : []),
    ...(count.putBack > 0 ? [`Put back because of the price: ${say.count(count.putBack, 'time')}.`] : []),
    ...(withoutWords > 0
      ? [
          `Asked for and not here: the close keeps the ${number(kept.length - 1, 0)} wishes that came most often in their words, and counts ${say.count(withoutWords, 'other')} without.`,
        ]
      : []),
  ];
}

/** Two devices closed the same day. */
export const closedTwiceWords =
  'This day was closed on two devices, so its stock is booked twice. Close it again: that takes both back and books it once.';

/** @returns what was planned beside other hours that were typed, “11 h 30 min were planned.” */
export const plannedHours = (typed: number | null, planned: number, locale: string): string | undefined =>
  (typed ?? planned) === planned ? undefined : `${hoursWords(planned, locale)} were planned.`;
