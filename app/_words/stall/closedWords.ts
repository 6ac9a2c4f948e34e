import type { Formatter } from '@/app/_words/formatter';
import { nearDayWords } from '@/app/_words/orders/nearDayWords';
import type { TapsSince } from '@/lib/stall/count/tapsSince';
import { longestWeathers } from '@/lib/stall/evening/dayWeather';
import { plannedOutcome } from '@/lib/stall/evening/plannedOutcome';
import type { DayClose, StallPlan } from '@/shared/schemas/stallPapers';
import { weatherLabel, whenWeather } from './weatherWords';

export const decisionWords = { again: 'Go again', notAgain: 'Not again', later: 'Decide later' } as const;

export const closedWord = 'closed';

export const closedNames = {
  evening: 'See the evening',
  next: 'Plan the next one like it',
  heading: 'The plan it went by',
  noPlan: 'The plan it was counted by is not on this device. Bring in a copy from the device that fixed it.',
  late: 'A count that comes late',
  note: 'Note, put away, remove',
} as const;

/** What came, or was taken back, since the day was closed: a close holds what it was made of. */
export function tapsSinceWords(since: TapsSince): string {
  return `${cameOrWent(since)} after the close, so its sums and its stock are not those of the day. Close it again.`;
}

function cameOrWent(since: TapsSince): string {
  if (since === 'others') return 'As many taps came as were taken back';
  const many = Math.abs(since);
  const taps = many === 1 ? 'One tap' : `${many} taps`;
  return `${taps} ${since > 0 ? 'came' : many === 1 ? 'was taken back' : 'were taken back'}`;
}

/** The same in a row of the calendar. */
export const notClosedWhole = 'Other taps came after the close: close it again';

/** Under the profit of a closed day, what its plan had: “profit; the plan had 543.25 when it is dry” */
export function closedAgainst(
  { weather }: Pick<DayClose, 'weather'>,
  plan: StallPlan | null,
  amount: (money: number) => string,
): string {
  if (plan === null) return 'profit';
  const outcome = plannedOutcome(plan, longestWeathers(plan, weather?.parts ?? []));
  if (outcome !== null)
    return `profit; the plan had ${amount(outcome.profit)} ${whenWeather(weatherLabel(outcome, plan))}`;
  return plan.weightedProfit === null
    ? 'profit'
    : `profit; the plan had ${amount(plan.weightedProfit)}, over the weathers`;
}

/** “70 of 132 sold”. */
export function closedSold({ goods }: Pick<DayClose, 'goods'>, { number }: Formatter): string {
  const of = (key: 'sold' | 'brought') => number(goods.reduce((sum, one) => sum + one[key], 0));
  return `${of('sold')} of ${of('brought')} sold`;
}

/** How a row of the calendar tells a day that is closed: “483.95 profit, 38 an hour, go again” */
export function closedLine(
  { result, decision }: Pick<DayClose, 'result' | 'decision'>,
  amount: (money: number) => string,
  { number }: Formatter,
): string {
  const profit = result.profit === null ? 'profit not known' : `${amount(result.profit)} profit`;
  const pay = result.payPerHour === null ? [] : [`${number(result.payPerHour, 0)} an hour`];
  const next = decision === null ? [] : [decisionWords[decision].toLowerCase()];
  return [profit, ...pay, ...next].join(', ');
}

/** “337.25 to expect”, and when the plan was fixed. */
export const closedPlanAnswer = (
  { weightedProfit, issuedOn }: StallPlan,
  amount: (money: number) => string,
  today: string,
  locale: string,
): { readonly key: string; readonly after: string } => ({
  key: weightedProfit === null ? 'No profit was told' : amount(weightedProfit),
  after: `${weightedProfit === null ? '' : ' to expect'}, fixed ${nearDayWords(issuedOn, today, locale)}`,
});
