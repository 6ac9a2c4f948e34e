import { documentTax } from '@/lib/price/tax/documentTax';
import { asPaid } from '@/lib/stall/count/asPaid';
import type { DayCount } from '@/lib/stall/count/dayCount';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { roundCash } from '@/shared/roundCash';
import type { Coins } from '@/shared/schemas/stallDay';
import type { StallPay } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import type { CashReason, EveningAnswers } from './eveningAnswers';
import { type StockRow, soldFromOf } from './stockRows';

/** The money of a day, whole minor units. */
export interface DayMoney {
  /** What came in for goods, with tax, before coins are rounded. */
  readonly gross: number;
  readonly net: number;
  readonly tax: number;
  /** Takings as prices write them, without tax where it is added. */
  readonly written: number;
  /** What the goods come to at their prices less `written`: sets, and where nobody tapped all that came in less. */
  readonly reductions: number;
  readonly cash: number;
  readonly cashRounding: number;
  readonly card: number;
  /** What the reader says beyond all that goods come to, which is asked about; the takings are then what it says. */
  readonly beyond: number;
  readonly cardIs: 'tapped' | 'typed';
  readonly cardTickets: number;
  readonly ticketsAre: 'counted' | 'typed' | 'estimated';
  readonly fees: number;
  readonly payoutDue: number;
  readonly payout: EveningAnswers['card']['payout'];
  readonly commission: number;
  readonly float: number;
  /** Into the tin less out of it, beside sales. */
  readonly tinMoves: number;
  /** Of what went out, what was spent: a cost of the day. */
  readonly spent: number;
  readonly expectedCash: number;
  readonly countedCash: number | null;
  readonly coins: Coins | null;
  /** Counted less expected; null where nobody counted, and where nothing but the tin says what came in. */
  readonly difference: number | null;
  /** Of that difference; null where it was said of another one. */
  readonly reason: CashReason | null;
  /** What came in is reckoned from goods and prices, for tin or reader are not known. */
  readonly isReckoned: boolean;
}

/** Works out cash, cards and tax of a day. */
export function dayMoney(
  plan: StallPlan,
  count: DayCount,
  rows: readonly StockRow[],
  answers: Pick<EveningAnswers, 'cash' | 'card'>,
): DayMoney {
  const { currency } = plan;
  const counted = countedCash(answers.cash, currency);
  const float = coinsMinor(plan.float, currency);
  const takings =
    soldFromOf(count) === 'taps'
      ? tappedTakings(plan, count, rows, answers)
      : countedTakings(plan, rows, answers, counted === null ? null : counted - float - count.tinMinor);
  const taxed = taxOf(plan, count, takings);
  const cards = cardTickets(plan, count, rows, answers, takings);
  const units = fromMinor(takings.card as MinorUnits, currency);
  const fees = toMinor(units * plan.cardFee + cards.cardTickets * plan.cardFixedFee, currency);
  const base = plan.commissionBase === 'withTax' ? taxed.gross : taxed.net;
  const expectedCash = float + takings.cash + count.tinMinor;
  const difference = counted === null || takings.isFromTin ? null : counted - expectedCash;
  const { isFromTin: _, paid: _paid, ...came } = takings;
  return {
    ...came,
    ...taxed,
    ...cards,
    ...{ fees, float, expectedCash, difference, countedCash: counted },
    cardIs: answers.card.total === null ? 'tapped' : 'typed',
    payoutDue: takings.card - fees,
    payout: answers.card.payout,
    commission: toMinor(fromMinor(base as MinorUnits, currency) * plan.commission, currency),
    tinMoves: count.tinMinor,
    spent: count.spentMinor,
    coins: answers.cash.coins,
    reason: difference === 0 || answers.cash.reasonFor !== difference ? null : answers.cash.reason,
  };
}

/** @returns what notes and coins come to, whole minor units. */
export const coinsMinor = (coins: Coins, currency: string): number =>
  coins.reduce((sum, { value, count }) => sum + toMinor(value, currency) * count, 0);

// Helpers

type Takings = Pick<
  DayMoney,
  'written' | 'reductions' | 'cash' | 'cashRounding' | 'card' | 'beyond' | 'isReckoned'
> & {
  /** What customers owed for goods, with tax. */
  readonly paid: number;
  /** Cash is what was found in the tin, so nothing can differ from it. */
  readonly isFromTin: boolean;
};

function tappedTakings(
  plan: StallPlan,
  count: DayCount,
  rows: readonly StockRow[],
  { card }: Pick<EveningAnswers, 'card'>,
): Takings {
  const cash = untappedMinor(rows, 'cash');
  const byCard = untappedMinor(rows, 'card');
  const [cashPaid, cardPaid] = [asPaid(plan, cash), asPaid(plan, byCard)];
  // Nobody pays what no coin is for, tapped or not.
  const inCoins = roundCash(cashPaid as MinorUnits, plan.currency);
  const came = asReaderSays(count.cashMinor + inCoins, count.cardMinor + cardPaid, card.total);
  return {
    ...came,
    written: count.writtenMinor + cash + byCard + beforeTax(plan, came.beyond),
    paid: count.grossMinor + cashPaid + cardPaid + came.beyond,
    reductions: count.reductionsMinor,
    cashRounding: count.cashRoundingMinor + inCoins - cashPaid,
    ...{ isReckoned: false, isFromTin: false },
  };
}

/** @returns what sales come to that the count told and no tap, as prices write it; below 0 what was tapped too much */
const untappedMinor = (rows: readonly StockRow[], pay: StallPay): number =>
  rows.reduce((sum, row) => (row.untappedPay === pay ? sum + row.untapped * row.untappedEachMinor : sum), 0);

/** Nobody tapped: tin and reader say what came in, and where they do not, goods and prices. */
function countedTakings(
  plan: StallPlan,
  rows: readonly StockRow[],
  { card }: Pick<EveningAnswers, 'card'>,
  inTin: number | null,
): Takings {
  const asked = rows.reduce((sum, row) => sum + row.revenueMinor, 0);
  const came = asReaderSays(asPaid(plan, asked), 0, card.total);
  const isReckoned = inTin === null || card.total === null;
  const cash = isReckoned ? came.cash : inTin;
  const paid = cash + came.card;
  const written = isReckoned ? asked + beforeTax(plan, came.beyond) : beforeTax(plan, paid);
  return {
    ...came,
    ...{ written, paid, cash, isReckoned },
    reductions: asked - written,
    cashRounding: 0,
    isFromTin: !isReckoned,
  };
}

/**
 * What the reader took otherwise than was thought went into the tin or came out of it, but no sale takes money out of
 * it: what the reader says beyond that came in besides.
 *
 * @param cash thought to be paid in cash; below 0 more was given back than taken
 * @param total what the reader says; null as thought
 */
function asReaderSays(
  cash: number,
  card: number,
  total: number | null,
): Pick<DayMoney, 'cash' | 'card' | 'beyond'> {
  if (total === null) return { cash, card, beyond: 0 };
  const moved = cash + card - total;
  const left = Math.max(moved, Math.min(cash, 0));
  return { cash: left, card: total, beyond: left - moved };
}

const beforeTax = ({ taxMode, tax, currency }: StallPlan, minor: number): number =>
  taxMode === 'added' ? toMinor(fromMinor(minor as MinorUnits, currency) / (1 + tax), currency) : minor;

/**
 * Inside prices once on the day’s total, or on each ticket as the workshop’s rule says. Where it is added each ticket was
 * taxed as it was paid, and that is what was collected.
 */
function taxOf(
  { taxMode, tax, taxRounding, currency }: StallPlan,
  { tickets }: DayCount,
  { written, paid }: Pick<Takings, 'written' | 'paid'>,
): Pick<DayMoney, 'gross' | 'net' | 'tax'> {
  if (taxMode !== 'inside') return { gross: paid, net: written, tax: paid - written };
  const each = taxRounding === 'line' ? tickets.map((one) => one.cashMinor + one.cardMinor) : [];
  // What no ticket bears: rounded coins, and what was found sold in the evening.
  const rest = written - each.reduce((sum, minor) => sum + minor, 0);
  const lines = rest === 0 && each.length > 0 ? each : [...each, rest];
  const { total } = documentTax(
    lines.map((minor) => ({ amount: minor as MinorUnits, tax })),
    { currency, mode: taxMode, rounding: taxRounding },
  );
  return { gross: total.with, net: total.without, tax: total.tax };
}

function cardTickets(
  { piecesPerTicket }: StallPlan,
  count: DayCount,
  rows: readonly StockRow[],
  { card }: Pick<EveningAnswers, 'card'>,
  takings: Takings,
): Pick<DayMoney, 'cardTickets' | 'ticketsAre'> {
  if (card.tickets !== null) return { cardTickets: card.tickets, ticketsAre: 'typed' };
  const closed = count.tickets.filter(({ isUnclosed, cardMinor }) => !isUnclosed && cardMinor > 0).length;
  if (count.hasTickets) return { cardTickets: closed, ticketsAre: 'counted' };
  const unclosed = count.tickets.filter(({ isUnclosed }) => isUnclosed);
  const pieces = rows.reduce((sum, { sold }) => sum + sold, 0);
  const all = unclosed.length > 0 ? unclosed : [{ pieces, cashMinor: takings.cash, cardMinor: takings.card }];
  const guessed = all.reduce((sum, one) => sum + piecesByCard(one) / piecesPerTicket, 0);
  return { cardTickets: closed + Math.round(guessed), ticketsAre: 'estimated' };
}

type Sold = Pick<DayCount['tickets'][number], 'pieces' | 'cashMinor' | 'cardMinor'>;

/** By its part of the money, for a piece bears no word on how it was paid. */
function piecesByCard({ pieces, cashMinor, cardMinor }: Sold): number {
  const all = cashMinor + cardMinor;
  return all > 0 ? Math.max(0, pieces * (cardMinor / all)) : 0;
}

const countedCash = ({ counted, coins }: EveningAnswers['cash'], currency: string): number | null =>
  coins === null ? counted : coinsMinor(coins, currency);
