import type { TextContext } from '@/app/_words/formatter';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { daysWords, nearDayWords } from '@/app/_words/orders/nearDayWords';
import { spelledNumber, withCapital } from '@/app/_words/spelledNumber';
import { usableLocale } from '@/app/_words/usableLocale';
import type { BoardOrder, todayList } from '@/lib/orders/board/todayList';
import { settlement, toGiveBackMinor } from '@/lib/orders/money/settlement';

type TodayItem = ReturnType<typeof todayList>[number];

/** @returns how much there is to do today: its bold beginning, and the rest. */
export function todayAnswer(count: number): readonly [string, string] {
  if (count === 0) return ['Nothing today,', 'and nothing is late'];
  return [`${withCapital(spelledNumber(count))} ${count === 1 ? 'thing' : 'things'}`, 'to do'];
}

/** One thing to do today. */
interface TodayWords {
  readonly what: string;
  /** Why today, or since when. */
  readonly why: string;
  /** What stands on its button, or on the link to where it is done. */
  readonly button: string;
}

/** What a thing to do is about. */
interface TodayAbout {
  /** Null where it is of no single order. */
  readonly order: BoardOrder | null;
  /** What is open, where that is the thing to do. */
  readonly missing: string | null;
  /** Whom to write to. */
  readonly who: string;
  /** What has to be there before it can be quoted; null where all is. */
  readonly lacks: string | null;
}

export function todayWords(
  { what, on, days }: TodayItem,
  { order, missing, who, lacks }: TodayAbout,
  today: string,
  context: TextContext,
): TodayWords {
  const name = order?.facts.order.name ?? '';
  const day = nearDayWords(on, today, context.locale);
  const due = days > 0 ? `${daysWords(days)} late, due ${day}` : days === 0 ? 'due today' : `due ${day}`;
  switch (what) {
    case 'orderBlanks':
      return { what: `Buy the blanks for ${name}`, why: due, button: 'Buy' };
    case 'answer':
      return {
        what: `Answer ${name}`,
        why: order?.standing.enquiredOn == null ? 'no answer yet' : `asked ${day}`,
        button: lacks === null ? 'Quote' : 'Price',
      };
    case 'balance':
      return { what: `Ask for ${owed(order, 'dueMinor', context)} of ${name}`, why: due, button: 'Ask' };
    case 'deposit':
      return {
        what: `Ask for ${owed(order, 'depositOpenMinor', context)} before ${name}`,
        why: due,
        button: 'Ask',
      };
    case 'giveBack':
      return {
        what: `Give ${toGiveBack(order, context)} back to ${who}`,
        why: whyBack(order),
        button: 'Give back',
      };
    case 'quoteEnds':
      return {
        what: days > 0 ? `Quote ${name} anew` : `Ask about the quote of ${name}`,
        why: days > 0 ? `it ended ${day}` : `it ends ${day}`,
        button: days > 0 ? 'Quote' : 'Ask',
      };
    case 'sendProof':
      return { what: `Send the proof of ${name}`, why: due, button: 'Proof' };
    case 'proofUnanswered':
      return {
        what: `Ask about the proof of ${name}`,
        why: `sent ${day}, no answer for ${daysWords(days)}`,
        button: 'Ask',
      };
    case 'pack':
      return { what: `Pack ${name}`, why: due, button: 'Pack' };
    case 'deliver':
      return { what: `Hand over ${name}`, why: due, button: 'Hand over' };
    case 'openItem':
      return { what: `${missing ?? 'Something missing'}: ${name}`, why: due, button: 'It is here' };
    case 'printerIdle':
      return {
        what: 'Print a nozzle page',
        why: `no print noted for ${daysWords(days)}, since ${day}`,
        button: 'Note a print',
      };
    default:
      return what satisfies never;
  }
}

// Helpers

/** The amount, where it is known. */
function owed(order: BoardOrder | null, of: 'dueMinor' | 'depositOpenMinor', context: TextContext): string {
  const money = order?.standing.money;
  const minor = money?.[of] ?? null;
  return money === undefined || minor === null
    ? of === 'dueMinor'
      ? 'the balance'
      : 'the deposit'
    : minorMoney(minor, money.currency, usableLocale(context.locale));
}

function toGiveBack(order: BoardOrder | null, { locale }: TextContext): string {
  if (order === null) return 'what came too much';
  const { standing } = order;
  return minorMoney(toGiveBackMinor(standing), standing.money.currency, usableLocale(locale));
}

function whyBack(order: BoardOrder | null): string {
  if (order === null) return '';
  const { name } = order.facts.order;
  return settlement(order.standing) === null
    ? `too much came for ${name}`
    : `${name} was called off, and it is not billed`;
}
