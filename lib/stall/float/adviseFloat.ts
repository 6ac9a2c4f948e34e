import { asPaid, type TaxTerms } from '@/lib/stall/count/asPaid';
import { openHours } from '@/lib/stall/days/openHours';
import { stockFor } from '@/lib/stall/plan/advice/stockFor';
import { poissonDemand } from '@/lib/stall/plan/demand/demand';
import { commonestPrice } from '@/lib/stall/prices/judgeSet';
import { daysInOrder } from '@/lib/stall/sellingDays';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { roundCash } from '@/shared/roundCash';
import type { Coins, StallDay } from '@/shared/schemas/stallDay';
import { type Cash, cashOf } from '@/shared/tables/coins';

/** The first customers bring large notes; what they pay with gives change to those who come later. */
const FIRST_HOURS = 1.5;
/** On nine days of ten no more pay cash by then. */
const SURE = 0.9;
const MOST_TICKETS = 10_000;

export interface FloatAsked extends TaxTerms {
  readonly currency: string;
  readonly stallDay: Pick<StallDay, 'days' | 'float'>;
  /** Price of each goods as it is written, and pieces expected of it over all days. Currency units. */
  readonly goods: readonly { readonly price: number; readonly expected: number }[];
  /** Prices of sets, which are paid as well. */
  readonly sets: readonly number[];
  readonly cardShare: number;
  readonly piecesPerTicket: number;
}

export type FloatAdvice =
  | {
      readonly kind: 'advised';
      /** Largest first; none where every price is one that notes pay. */
      readonly coins: Coins;
      readonly total: number;
      /** Tickets of the first 90 minutes, and how many of them may be paid in cash. */
      readonly firstTickets: number;
      readonly cashTickets: number;
      /** What is paid with, for which price, and what is given back. */
      readonly note: number;
      readonly price: number;
      readonly change: number;
    }
  /** Notes and coins of the currency are not known here. */
  | { readonly kind: 'coinsUnknown' }
  | { readonly kind: 'nothingExpected' };

/**
 * Change for the first 90 minutes: as many cash customers as come on nine days of ten each pay the price that sells most
 * and needs change with the largest note in common use.
 *
 * It is put together so that each of them can be given change: of every value below the largest that change takes, as
 * many as make up the next larger one but one; the rest in the largest. Values that no price needs are left out.
 */
export function adviseFloat(asked: FloatAsked): FloatAdvice {
  const cash = cashOf(asked.currency);
  if (cash === null) return { kind: 'coinsUnknown' };
  const { goods, sets } = inCoins(asked);
  const price = usualPrice(goods, cash.commonNote);
  const firstTickets = asked.stallDay.float.firstTickets ?? ticketsOfStart(asked);
  if (price === null || !(firstTickets > 0)) return { kind: 'nothingExpected' };
  const cashTickets = surely(firstTickets * (1 - asked.cardShare));
  const note = paidWith(price, cash.commonNote);
  const change = exact(note - price);
  const coins = coinsFor(cashTickets, change, valuesFor(cash, { goods, sets }, change));
  const total = exact(coins.reduce((sum, { value, count }) => sum + value * count, 0));
  return { kind: 'advised', coins, total, firstTickets, cashTickets, note, price, change };
}

// Helpers

/** Fractions of a coin are noise of the sum. */
const exact = (amount: number): number => Number(amount.toFixed(4));

/** Prices as they are paid in cash: with tax where it is added, in coins. */
function inCoins({ goods, sets, currency, ...terms }: FloatAsked): Pick<FloatAsked, 'goods' | 'sets'> {
  const paid = (price: number): number => {
    const due = asPaid(terms, toMinor(price, currency));
    return fromMinor(roundCash(due as MinorUnits, currency), currency);
  };
  return { goods: goods.map((one) => ({ ...one, price: paid(one.price) })), sets: sets.map(paid) };
}

/** Of 60 two notes of 50 are paid. */
const paidWith = (price: number, note: number): number => exact(Math.ceil(price / note - 1e-9) * note);

/** The price that sells most among those that need change; where none does, the one that sells most. */
function usualPrice(goods: FloatAsked['goods'], note: number): number | null {
  const all = goods.map(({ price, expected }) => ({ price, sold: expected }));
  const changing = all.filter(({ price }) => paidWith(price, note) > price);
  return commonestPrice(changing.length > 0 ? changing : all);
}

/** Of the first day, by its part of the visitors and its own hours. */
function ticketsOfStart({ stallDay, goods, piecesPerTicket }: FloatAsked): number {
  const [first] = daysInOrder(stallDay);
  const hours = first === undefined ? 0 : openHours({ days: [first] });
  if (first === undefined || hours <= 0) return 0;
  const weights = stallDay.days.reduce((sum, { weight }) => sum + weight, 0);
  const pieces = goods.reduce((sum, { expected }) => sum + expected, 0) * (first.weight / weights);
  return (pieces / piecesPerTicket) * Math.min(1, FIRST_HOURS / hours);
}

/** @param mean of a count that is Poisson: customers come by themselves */
function surely(mean: number): number {
  if (!(mean > 0)) return 0;
  return stockFor(SURE, poissonDemand(mean).chanceUpTo, MOST_TICKETS);
}

/**
 * Values that change is made of: from the largest that goes into it at least twice down to the smallest that any price
 * needs. A larger one would leave whoever comes second without.
 */
function valuesFor(
  { notes, coins }: Cash,
  { goods, sets }: Pick<FloatAsked, 'goods' | 'sets'>,
  change: number,
): readonly number[] {
  const prices = [...goods.map(({ price }) => price), ...sets];
  const all = [...notes, ...coins];
  const larger = all.filter((value) => value * 2 <= change);
  // A five and twos make no one, so where fives are given the ones come along.
  const pays = (value: number) =>
    [...prices, ...larger.filter((other) => other > value)].every(isMultiple(value));
  const least = all.find(pays) ?? all.at(-1) ?? 1;
  return all.filter((value) => value >= least && (value * 2 <= change || value === least));
}

const isMultiple =
  (value: number) =>
  (amount: number): boolean =>
    Math.abs(amount / value - Math.round(amount / value)) < 1e-6;

function coinsFor(tickets: number, change: number, values: readonly number[]): Coins {
  const [largest, ...smaller] = values;
  if (largest === undefined || tickets === 0 || change === 0) return [];
  const small = smaller.map((value, at) => ({
    value,
    count: tickets * Math.max(1, Math.ceil((values[at] ?? value) / value - 1e-9) - 1),
  }));
  const rest = tickets * change - small.reduce((sum, { value, count }) => sum + value * count, 0);
  const count = Math.max(tickets, Math.ceil(rest / largest - 1e-9));
  return [{ value: largest, count }, ...small];
}
