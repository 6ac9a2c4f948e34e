import { lateDays } from '@/lib/orders/money/dueDays';
import { isDelivered, settlement, toGiveBackMinor } from '@/lib/orders/money/settlement';
import type { OrderFacts } from '@/lib/orders/orderFacts';
import type { OrderStanding } from '@/lib/orders/orderStanding';
import { compareText } from '@/shared/compareText';
import { daysBetween } from '@/shared/days';
import type { InkPrints } from '@/shared/schemas/entries';
import { isOpen, type OrderTurn } from './turnOf';

/** An order as the board has it. */
export interface BoardOrder {
  readonly facts: OrderFacts;
  readonly standing: OrderStanding;
  readonly turn: OrderTurn;
}

/** Something to be done or looked at today. */
interface TodayItem {
  readonly what:
    | 'orderBlanks'
    | 'balance'
    | 'deposit'
    | 'giveBack'
    | 'deliver'
    | 'pack'
    | 'answer'
    | 'quoteEnds'
    | 'sendProof'
    | 'proofUnanswered'
    | 'openItem'
    | 'printerIdle';
  /** Null where it is of no single order. */
  readonly orderId: string | null;
  /** The day it is due, or since which it has waited. */
  readonly on: string;
  /** Days since that day; less than 0 where it is still to come. */
  readonly days: number;
}

/** @returns the last day on which anything was printed or pressed, as it was noted; null where nothing was. */
export function lastPrintOn(
  inkPrints: readonly { readonly body: Pick<InkPrints, 'day'> }[],
  orders: readonly BoardOrder[],
): string | null {
  const steps = orders.flatMap(({ standing }) =>
    standing.steps.flatMap(({ step, day }) =>
      step.what === 'printed' || step.what === 'pressed' ? [day] : [],
    ),
  );
  return [...inkPrints.map(({ body }) => body.day), ...steps].toSorted().at(-1) ?? null;
}

interface TodayHabits {
  readonly today: string;
  /** Days without a print after which the printer is told of. */
  readonly idleDays: number;
  /** The last day something was printed; null where nobody noted any. */
  readonly lastPrintOn: string | null;
}

/** A quote is told of so many days before it ends, and a proof after so many without an answer; common practice. */
const QUOTE_ENDS_DAYS = 2;
const PROOF_DAYS = 3;

/** @returns what today asks for, the most urgent first: longest overdue, then what costs most to miss. */
export function todayList(
  orders: readonly BoardOrder[],
  { today, idleDays, lastPrintOn }: TodayHabits,
): readonly TodayItem[] {
  const items = orders.flatMap((order) => itemsOf(order, today));
  const idle = lastPrintOn === null ? 0 : daysBetween(lastPrintOn, today);
  const printer: readonly TodayItem[] =
    lastPrintOn !== null && idle >= idleDays
      ? [{ what: 'printerIdle', orderId: null, on: lastPrintOn, days: idle }]
      : [];
  const urgency = ({ what, days }: TodayItem) => (isDated(what) ? days : 0);
  return [...items, ...printer].toSorted(
    (one, other) =>
      urgency(other) - urgency(one) ||
      ranks.indexOf(one.what) - ranks.indexOf(other.what) ||
      other.days - one.days ||
      compareText(one.orderId ?? '', other.orderId ?? ''),
  );
}

// Helpers

/** What costs most to miss comes first among what is equally late. */
const ranks: readonly TodayItem['what'][] = [
  'orderBlanks',
  'deliver',
  'pack',
  'answer',
  'balance',
  'deposit',
  'giveBack',
  'sendProof',
  'quoteEnds',
  'openItem',
  'proofUnanswered',
  'printerIdle',
];

/** Of the rest the day says how long it has waited, not that it is late. */
const isDated = (what: TodayItem['what']): boolean =>
  what !== 'proofUnanswered' && what !== 'printerIdle' && what !== 'giveBack';

function itemsOf(order: BoardOrder, today: string): readonly TodayItem[] {
  const { orderId } = order.facts;
  const due = (what: TodayItem['what'], on: string): TodayItem => ({
    ...{ what, orderId, on },
    days: daysBetween(on, today),
  });
  return [
    ...(isToGiveBack(order) ? [due('giveBack', lastMoneyOn(order) ?? today)] : []),
    ...waitItems(order, due, today),
  ];
}

/** Until the goods are out, what came too much may be for what is wanted besides. */
const isToGiveBack = ({ standing }: BoardOrder): boolean =>
  toGiveBackMinor(standing) > 0 && (isDelivered(standing) || settlement(standing) !== null);

/** @returns the day on which money came or was credited last; null where none did. */
function lastMoneyOn({ facts }: BoardOrder): string | null {
  const days = facts.happened.flatMap((one) =>
    one.kind === 'payment'
      ? [one.body.day]
      : one.kind === 'creditNote' && !one.withdrawn
        ? [one.body.issuedOn]
        : [],
  );
  return days.toSorted().at(-1) ?? null;
}

function waitItems(
  { facts, standing, turn }: BoardOrder,
  due: (what: TodayItem['what'], on: string) => TodayItem,
  today: string,
): readonly TodayItem[] {
  if (!isOpen(facts, standing) || standing.side.side === 'held') return [];
  return turn.waits.flatMap(({ why, dueOn }): readonly TodayItem[] => {
    switch (why) {
      case 'answer':
        return [due('answer', dueOn ?? today)];
      case 'newQuote':
      case 'decision':
        return dueOn !== null && daysBetween(today, dueOn) <= QUOTE_ENDS_DAYS
          ? [due('quoteEnds', dueOn)]
          : [];
      case 'orderBlanks':
        return dueOn === null || dueOn <= today ? [due('orderBlanks', dueOn ?? today)] : [];
      case 'pack':
        return [due('pack', dueOn ?? today)];
      case 'deliver':
        return dueOn === null || dueOn <= today ? [due('deliver', dueOn ?? today)] : [];
      case 'approval': {
        const proof = facts.happened.findLast((one) => one.kind === 'proof' && !one.withdrawn);
        const on = proof?.kind === 'proof' ? proof.body.issuedOn : null;
        return on !== null && lateDays(on, today) >= PROOF_DAYS ? [due('proofUnanswered', on)] : [];
      }
      case 'proof':
      case 'newProof':
        return [due('sendProof', dueOn ?? today)];
      case 'openItem':
        return dueOn !== null && dueOn <= today ? [due('openItem', dueOn)] : [];
      case 'deposit':
        return dueOn !== null && dueOn <= today ? [due('deposit', dueOn)] : [];
      case 'askBalance':
        return [due('balance', dueOn ?? today)];
      case 'remind':
      case 'balance':
        return dueOn !== null && dueOn <= today ? [due('balance', dueOn)] : [];
      default:
        return [];
    }
  });
}
