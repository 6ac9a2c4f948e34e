import { dayFormat } from '@/app/_words/dayFormat';
import type { AnswerWords } from '@/app/_words/docket/answerWords';
import type { Formatter } from '@/app/_words/formatter';
import { listed } from '@/app/_words/listed';
import { minorMoney, minorWords } from '@/app/_words/orders/minorWords';
import type { Evening, Unsettled } from '@/lib/stall/evening/reconcile';
import { goodsName } from './goodsName';

export const noPlanWords = {
  title: 'No plan was fixed',
  line: 'The evening is held against what went along. Load the car first: that fixes the plan.',
  link: 'To the plan of the day',
} as const;

export const toDayWords = 'To the stall day';

/** Two devices fixed a plan for one fair. */
export const eveningOfSeveralWords =
  'Two devices fixed a plan for this day. The evening goes by the newest: if the other one went along, what was brought and what it cost are wrong here. Take the wrong one back in the plan.';

/** Taps of an earlier plan count at the price they were tapped at. */
export const earlierPlanWords = (taps: number): string =>
  `${taps === 1 ? 'One tap was' : `${taps} taps were`} counted by an earlier plan: ${taps === 1 ? 'its' : 'their'} money counts as tapped, what was brought and what it cost is by the newest. If that one was not in the car, take it back in the plan.`;

/** What is said comes to more than can be kept exact. */
export const beyondReachWords =
  'What you typed comes to hundreds of millions, which cannot be kept exact to the coin, so the sums here are without it. Look for a number with digits too many: a count, the tin, the reader or a price of the plan.';

/** Under the name of the fair: its day, and how many were sold. */
export function soldLine(
  { plan, rows, pieces }: Evening,
  isClosed: boolean,
  today: string,
  locale: string,
): string {
  const first = plan.days[0]?.day ?? today;
  const day = dayFormat(locale, { weekday: 'long', day: 'numeric', month: 'long' }).format(
    new Date(`${first}T00:00:00Z`),
  );
  const brought = rows.reduce((sum, row) => sum + row.brought, 0);
  const days = plan.days.length > 1 ? ` and ${plan.days.length - 1} more` : '';
  return `${day}${days}, ${pieces} of ${brought} pieces sold${isClosed ? ', closed' : ''}`;
}

export function takenWords({ money, plan }: Evening, locale: string): AnswerWords {
  const tax = { none: '', inside: ', tax inside', added: ', with the tax added' }[plan.taxMode];
  return { key: minorWords(money.gross, plan.currency, locale), after: `${plan.currency} taken${tax}` };
}

export function earnsWords({ result, rows, unsettled }: Evening, { number }: Formatter): string {
  if (result.profit === null) {
    return rows.some(({ left }) => left === null)
      ? 'What it leaves is known once the goods are counted.'
      : 'What it leaves is not known: the plan lacks a cost.';
  }
  const pay = result.payPerHour === null ? '' : `, pays you ${number(result.payPerHour, 0)} an hour`;
  const soFar = unsettled.length === 0 ? '' : ' so far';
  return `leaves ${number(result.profit, 0)}${soFar}${pay}`;
}

/** What is to be settled, in one line. */
export function openWords(evening: Evening, locale: string): string {
  const { unsettled } = evening;
  if (unsettled.length === 0) return 'Nothing is left to settle.';
  const things = unsettled.map((one) => openThing(one, evening, locale));
  const shown = things.length > MOST_NAMED ? [...things.slice(0, MOST_NAMED - 1), 'more'] : things;
  return `To settle: ${listed(shown)}.`;
}

/** Why the day cannot be closed yet. */
export const closingBlocked = (evening: Evening): string =>
  `Opens once ${listed([...new Set(evening.unsettled.map(({ slip }) => SETTLED_AS[slip]))])} ${
    new Set(evening.unsettled.map(({ slip }) => slip)).size === 1 ? 'is' : 'are'
  } settled, or said to be not known.`;

// Helpers

const MOST_NAMED = 3;

const SETTLED_AS: Readonly<Record<Unsettled['slip'], string>> = {
  cash: 'cash',
  card: 'card',
  stock: 'stock',
};

function openThing(one: Unsettled, { plan }: Evening, locale: string): string {
  switch (one.why) {
    case 'notCounted':
      return one.slip === 'cash'
        ? 'count the tin'
        : `count ${one.sizes === 1 ? 'one size' : `${one.sizes} sizes`}`;
    case 'noTotal':
      return 'what the card reader took';
    case 'beyond':
      return `${minorMoney(one.minor, plan.currency, locale)} more on the reader than was sold`;
    case 'differs': {
      if (one.slip === 'cash') {
        const money = minorMoney(Math.abs(one.minor), plan.currency, locale);
        return `the tin ${money} ${one.minor < 0 ? 'short' : 'over'}`;
      }
      const { difference, goods } = one.row;
      const pieces = Math.abs(difference ?? 0);
      return `${pieces} ${goodsName(plan, goods)} ${(difference ?? 0) < 0 ? 'missing' : 'too many'}`;
    }
    default:
      return one satisfies never;
  }
}
