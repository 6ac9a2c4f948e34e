import { dayFormat } from '@/app/_words/dayFormat';
import type { TextContext } from '@/app/_words/formatter';
import { minorInRow } from '@/app/_words/orders/minorWords';
import { daysWords } from '@/app/_words/orders/nearDayWords';
import { spelledNumber, withCapital } from '@/app/_words/spelledNumber';
import type { Purse } from '@/lib/orders/board/purse';
import type { BoardOrder } from '@/lib/orders/board/todayList';

type Turn = BoardOrder['turn']['turn'];

/** How many open orders wait for whom; what waits for nobody needs no word. */
type TurnCounts = Readonly<Record<Exclude<Turn, 'nobody'>, number>>;

/** @returns whose turn it is and what is late, in one sentence: its bold beginning, and the rest. */
export function boardAnswer(
  counts: TurnCounts,
  all: readonly Purse[],
  context: TextContext,
): readonly [string, string] {
  const late = all.flatMap(({ currency, late: own }) =>
    own.length === 0
      ? []
      : [
          lateWords(
            minorInRow(
              own.reduce((sum, { dueMinor }) => sum + dueMinor, 0),
              currency,
              context,
            ),
            own.map(({ days }) => days),
          ),
        ],
  );
  const { you, customer } = counts;
  const yours = you === 0 ? 'Nothing waits for you' : `${withCapital(waiting(you))} for you`;
  const theirs = customer === 0 ? '' : `, ${spelledNumber(customer)} for an answer`;
  return [yours, [theirs, ...late.map((one) => `; ${one}`)].join('')];
}

/** @returns the day, and how many orders are open. */
export const boardLine = (today: string, open: number, { locale }: TextContext): string =>
  `${longDay(today, locale)}, ${open === 0 ? 'none' : spelledNumber(open)} open`;

export const turnHeadings: Readonly<Record<Turn, string>> = {
  you: 'You',
  customer: 'Customers',
  nobody: 'Nobody',
};

/** @returns what stands beside the heading of a group: how many there are, and what that means. */
export const groupLine = (turn: Turn, count: number): string =>
  `${spelledNumber(count)}, ${groupMeanings[turn]}`;

export const turnChoices: readonly { readonly value: Turn | 'all'; readonly label: string }[] = [
  { value: 'all', label: 'Everybody’s turn' },
  { value: 'you', label: 'Your turn' },
  { value: 'customer', label: 'The customer’s turn' },
  { value: 'nobody', label: 'Nobody’s turn' },
];

// Helpers

const longDay = (day: string, locale: string): string =>
  dayFormat(locale, { weekday: 'long', day: 'numeric', month: 'long' }).format(new Date(`${day}T00:00:00Z`));

const groupMeanings: Readonly<Record<Turn, string>> = {
  you: 'act on these',
  customer: 'nothing for you to do',
  nobody: 'on its way or on hold',
};

const waiting = (count: number): string => `${spelledNumber(count)} ${count === 1 ? 'waits' : 'wait'}`;

function lateWords(amount: string, days: readonly number[]): string {
  const longest = daysWords(Math.max(...days));
  return days.length === 1 ? `${amount} is ${longest} late` : `${amount} is late, ${longest} the longest`;
}
