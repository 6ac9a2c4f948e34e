import type { MinorUnits } from '@/shared/money';
import { roundCash } from '@/shared/roundCash';
import type { StallPay } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { asPaid } from './asPaid';
import type { TicketCount } from './dayCount';
import type { Ticket, TicketLine } from './ticketLines';

/** What tickets come to, whole minor units. */
interface TicketMoney {
  readonly tickets: readonly TicketCount[];
  readonly writtenMinor: number;
  readonly grossMinor: number;
  readonly cashMinor: number;
  readonly cashRoundingMinor: number;
  readonly cardMinor: number;
}

/** How a plan takes money. */
type PayTerms = Pick<StallPlan, 'taxMode' | 'tax' | 'currency'>;

/** A sum of a ticket, whole minor units. */
interface Paid {
  /** As prices write it. */
  readonly written: number;
  /** With tax where it is added. */
  readonly due: number;
  /** As it is paid: in cash rounded to the coin. */
  readonly paid: number;
}

/**
 * Ticket by ticket, as it is paid: tax is added where prices are without it, then cash is rounded to the coin. Each way
 * of paying is taxed for itself. What was tapped in another currency is left out.
 */
export function ticketMoney(tickets: readonly Ticket[], terms: PayTerms): TicketMoney {
  const numbers = new Map<string, number>();
  const paid = payingOf(terms);
  let [writtenMinor, grossMinor, cashMinor, cashRoundingMinor, cardMinor] = [0, 0, 0, 0, 0];
  const counts = tickets.map(({ device, lines, isOpen, isUnclosed }): TicketCount => {
    const number = (numbers.get(device) ?? 0) + 1;
    numbers.set(device, number);
    const cash = paid(lines, 'cash');
    const card = paid(lines, 'card');
    writtenMinor += cash.written + card.written;
    grossMinor += cash.due + card.due;
    cashMinor += cash.paid;
    cashRoundingMinor += cash.paid - cash.due;
    cardMinor += card.paid;
    const pieces = lines.reduce((sum, line) => sum + line.pieces, 0);
    const at = lines[0]?.at ?? 0;
    const isRoundedOnce = isUnclosed && isOffCoin(lines, terms.currency, paid);
    return {
      ...{ device, number, pieces, cashMinor: cash.paid, cardMinor: card.paid, at },
      ...{ isOpen, isUnclosed, isRoundedOnce },
    };
  });
  return { tickets: counts, writtenMinor, grossMinor, cashMinor, cashRoundingMinor, cardMinor };
}

/**
 * How tickets of a plan are paid. Each sum is worked out once: a day has thousands of tickets and few different ones.
 *
 * @returns what the lines of one way of paying come to
 */
export function payingOf(terms: PayTerms): (lines: readonly TicketLine[], pay: StallPay) => Paid {
  const { currency } = terms;
  const known = { cash: new Map<number, Paid>(), card: new Map<number, Paid>() };
  return (lines, pay) => {
    const written = lines.reduce(
      (sum, line) => (line.pay === pay && line.currency === currency ? sum + line.minor : sum),
      0,
    );
    const before = known[pay].get(written);
    if (before !== undefined) return before;
    const due = asPaid(terms, written);
    const found = { written, due, paid: pay === 'cash' ? roundCash(due as MinorUnits, currency) : due };
    known[pay].set(written, found);
    return found;
  };
}

// Helpers

/** Whether some of several lines paid in cash could not be paid in coins by itself. */
function isOffCoin(
  lines: readonly TicketLine[],
  currency: string,
  paid: ReturnType<typeof payingOf>,
): boolean {
  const cash = lines.filter((line) => line.pay === 'cash' && line.currency === currency);
  const isOff = (line: TicketLine) => {
    const alone = paid([line], 'cash');
    return alone.paid !== alone.due;
  };
  return cash.length > 1 && cash.some(isOff);
}
