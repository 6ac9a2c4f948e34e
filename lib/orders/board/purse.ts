import { lateDays } from '@/lib/orders/money/dueDays';
import { type Exposure, exposureOfAll } from '@/lib/orders/money/exposure';
import { isDelivered, settlement, toGiveBackMinor } from '@/lib/orders/money/settlement';
import type { BoardOrder } from './todayList';
import { isOpen } from './turnOf';

/** Money of all open orders in one currency, and of all others what is to go back; whole minor units. */
export interface Purse {
  readonly currency: string;
  /** What is still owed of everything accepted. */
  readonly toComeMinor: number;
  readonly late: readonly { readonly orderId: string; readonly dueMinor: number; readonly days: number }[];
  /** Asked for by a paper, and not past its day. */
  readonly asked: readonly { readonly orderId: string; readonly dueMinor: number }[];
  /** Deposits and more that came for what is not delivered yet. */
  readonly inHandMinor: number;
  /** What came of orders that were cancelled or lost, and is neither given back nor billed. */
  readonly held: readonly { readonly orderId: string; readonly heldMinor: number }[];
  /** What came of all others beyond what is owed, be they over or not. */
  readonly tooMuch: readonly { readonly orderId: string; readonly tooMuchMinor: number }[];
  /** Passed on by nobody yet. */
  readonly toReachBankMinor: number;
  readonly exposure: Exposure;
}

/** @returns one for each currency, in their alphabetical order. */
export function purses(orders: readonly BoardOrder[], today: string): readonly Purse[] {
  const open = orders.filter(({ facts, standing }) => isOpen(facts, standing));
  const toGiveBack = orders.filter(({ standing }) => toGiveBackMinor(standing) > 0);
  const currencies = [...new Set([...open, ...toGiveBack].map(currencyOf))];
  return currencies.toSorted().map((currency) => {
    const own = open.filter((order) => currencyOf(order) === currency);
    const owed = toGiveBack.filter((order) => currencyOf(order) === currency);
    const sum = (of: (order: BoardOrder) => number) => own.reduce((total, order) => total + of(order), 0);
    return {
      currency,
      toComeMinor: sum(({ standing }) => standing.money.dueMinor ?? 0),
      late: own.flatMap((order) => lateOf(order, today)),
      asked: own.flatMap((order) => (lateOf(order, today).length > 0 ? [] : askedOf(order))),
      inHandMinor: sum(({ standing }) => (isDelivered(standing) ? 0 : standing.money.receivedMinor)),
      held: owed.filter(isCalledOff).map(({ facts: { orderId }, standing }) => ({
        ...{ orderId, heldMinor: toGiveBackMinor(standing) },
      })),
      tooMuch: owed
        .filter((order) => !isCalledOff(order))
        .map(({ facts: { orderId }, standing }) => ({ orderId, tooMuchMinor: toGiveBackMinor(standing) })),
      toReachBankMinor: sum(({ standing }) => standing.money.toReachBankMinor),
      exposure: exposureOfAll(own.map(({ standing }) => standing.money.exposure)),
    };
  });
}

// Helpers

/** What is owed now and is past its day: the balance once it was asked for, the deposit before. */
function lateOf({ facts, standing }: BoardOrder, today: string): Purse['late'] {
  const { due, dueMinor, depositOpenMinor } = standing.money;
  const balanceDays = lateDays(due.balanceOn, today);
  if (balanceDays > 0 && dueMinor !== null && dueMinor > 0) {
    return [{ orderId: facts.orderId, dueMinor, days: balanceDays }];
  }
  const days = lateDays(due.depositOn, today);
  return days > 0 && depositOpenMinor !== null && depositOpenMinor > 0
    ? [{ orderId: facts.orderId, dueMinor: depositOpenMinor, days }]
    : [];
}

/** What a paper asks for now: the balance, or the deposit before it. */
function askedOf({ facts, standing }: BoardOrder): Purse['asked'] {
  const { due, dueMinor, depositOpenMinor } = standing.money;
  const asked = due.balanceAsked ? dueMinor : due.depositAsked ? depositOpenMinor : null;
  return asked === null || asked === 0 ? [] : [{ orderId: facts.orderId, dueMinor: asked }];
}

const currencyOf = ({ standing }: BoardOrder): string => standing.money.currency;

const isCalledOff = ({ standing }: BoardOrder): boolean => settlement(standing) !== null;
