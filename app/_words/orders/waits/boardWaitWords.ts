import type { TextContext } from '@/app/_words/formatter';
import { byDayWords, daysWords, nearDayWords } from '@/app/_words/orders/nearDayWords';
import { dueName } from '@/app/_words/orders/orderDayWords';
import { withCapital } from '@/app/_words/spelledNumber';
import { isBenchStep } from '@/lib/orders/bench/stepDays';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import { dayToKeep } from '@/lib/orders/dayToKeep';
import { waitShort } from './waitNames';

type Waiting = BoardOrder['turn']['waits'][number];

/** What an order waits for, in two short lines. */
interface WaitWords {
  readonly first: string;
  readonly second: string;
  /** The first line says how late it is. */
  readonly isLate: boolean;
}

/** @returns what an order waits for first, with its day; how late it is stands in words. */
export function boardWaitWords(
  { facts, standing, turn }: BoardOrder,
  today: string,
  { locale }: TextContext,
): WaitWords {
  const [wait] = turn.waits;
  const { wantedOn } = facts.order;
  const dueDay = dayToKeep(facts.order, standing.agreed);
  const due = dueDay === null ? '' : `${dueName(dueDay, wantedOn)} ${nearDayWords(dueDay, today, locale)}`;
  if (wait === undefined) return { first: '', second: due, isLate: false };
  const { why, dueOn, lateDays } = wait;
  const thing = thingOf(wait, facts.order.openItems);
  // An enquiry bears the day it came: it has waited since, and nobody promised a day.
  if (why === 'answer') return { first: `${withCapital(thing)} today`, second: due, isLate: false };
  if (why === 'over') return { first: overWords(standing), second: '', isLate: false };
  if (dueOn === null) return { first: withCapital(thing), second: due, isLate: false };
  if (why === 'newQuote') {
    return {
      first: withCapital(thing),
      second: `ended ${nearDayWords(dueOn, today, locale)}`,
      isLate: false,
    };
  }
  if (lateDays > 0) {
    return {
      first: `${withCapital(daysWords(lateDays))} late`,
      second: `${thing}, due ${nearDayWords(dueOn, today, locale)}`,
      isLate: true,
    };
  }
  // The day it is to be ready is none by which it is to be printed.
  if (isBenchStep(why)) return { first: withCapital(thing), second: due, isLate: false };
  return {
    first: `${withCapital(thing)} ${byDayWords(dueOn, today, locale)}`,
    second: due,
    isLate: false,
  };
}

/** @returns why an order is not on the board. */
export function overWords({ side, state }: Pick<BoardOrder['standing'], 'side' | 'state'>): string {
  if (side.side === 'lost') return `Lost: ${lossWords[side.why]}`;
  if (side.side === 'cancelled') return 'Cancelled';
  return state === 'closed' ? 'Closed' : 'Put away';
}

// Helpers

const lossWords: Readonly<
  Record<Extract<BoardOrder['standing']['side'], { readonly side: 'lost' }>['why'], string>
> = {
  price: 'the price',
  date: 'the day',
  noAnswer: 'no answer',
  rights: 'no right to the picture',
  other: 'another reason',
};

/** The missing thing itself, where it is known which. */
function thingOf(
  { why, turn, dueOn }: Waiting,
  openItems: BoardOrder['facts']['order']['openItems'],
): string {
  if (why !== 'openItem') return waitShort(why);
  const ofWhom = turn === 'you' ? 'maker' : turn === 'customer' ? 'customer' : 'supplier';
  const item = openItems.find((one) => one.doneOn === null && one.ofWhom === ofWhom && one.doneBy === dueOn);
  return item?.what ?? waitShort(why);
}
