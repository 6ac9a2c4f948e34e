import type { MinorUnits } from '@/shared/money';
import { roundCash } from '@/shared/roundCash';
import type { StallPay } from '@/shared/schemas/stallEvents';
import type { TicketCount } from './dayCount';
import type { Ticket, TicketLine } from './ticketLines';

/** What tickets come to, whole minor units. */
interface TicketMoney {
  readonly tickets: readonly TicketCount[];
  readonly grossMinor: number;
  readonly cashMinor: number;
  readonly cashRoundingMinor: number;
  readonly cardMinor: number;
}

/**
 * Cash is rounded to the coin ticket by ticket, as it is paid; what was tapped in another currency is left out.
 *
 * @param currency of the plan, ISO 4217
 */
export function ticketMoney(tickets: readonly Ticket[], currency: string): TicketMoney {
  const numbers = new Map<string, number>();
  const inCoins = coinsOf(currency);
  let [grossMinor, cashMinor, cashRoundingMinor, cardMinor] = [0, 0, 0, 0];
  const counts = tickets.map(({ device, lines, isOpen }): TicketCount => {
    const number = (numbers.get(device) ?? 0) + 1;
    numbers.set(device, number);
    const written = paidBy(lines, currency, 'cash');
    const cash = inCoins(written);
    const card = paidBy(lines, currency, 'card');
    grossMinor += written + card;
    cashMinor += cash;
    cashRoundingMinor += cash - written;
    cardMinor += card;
    const pieces = lines.reduce((sum, line) => sum + line.pieces, 0);
    return { device, number, pieces, cashMinor: cash, cardMinor: card, at: lines[0]?.at ?? 0, isOpen };
  });
  return { tickets: counts, grossMinor, cashMinor, cashRoundingMinor, cardMinor };
}

/** @returns what the lines of one way of paying come to before cash is rounded, whole minor units */
export const paidBy = (lines: readonly TicketLine[], currency: string, pay: StallPay): number =>
  lines.reduce((sum, line) => (line.pay === pay && line.currency === currency ? sum + line.minor : sum), 0);

// Helpers

/** Rounds cash of one currency, each sum once: a day has thousands of tickets and few different ones. */
function coinsOf(currency: string): (written: number) => number {
  const known = new Map<number, number>();
  return (written) => {
    const cash = known.get(written) ?? roundCash(written as MinorUnits, currency);
    known.set(written, cash);
    return cash;
  };
}
