import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StallPay } from '@/shared/schemas/stallEvents';
import type { TappedEntry } from './tappedEntry';

/** One line of what a customer pays; what is given back is below 0. */
export interface TicketLine {
  readonly id: string;
  /** Null for what is taken off for a set. */
  readonly goods: StallGoods | null;
  /** What was exchanged for it; null where nothing was. */
  readonly back: StallGoods | null;
  readonly setId: string | null;
  /** Pieces that go with the customer, less those that came back. */
  readonly pieces: number;
  readonly minor: number;
  /** False for a piece at a price of its own, unless the maker said that it counts for sets too. */
  readonly joinsSet: boolean;
  readonly currency: string;
  readonly pay: StallPay;
  readonly at: number;
}

/** What one customer bought on one device. */
export interface Ticket {
  readonly device: string;
  readonly lines: readonly TicketLine[];
  readonly isOpen: boolean;
  /** Nobody ever tapped *next customer* on this device. */
  readonly isUnclosed: boolean;
}

/**
 * Tickets as the devices closed them. Where nobody tapped *next customer* on a device all of it is one ticket.
 *
 * @param taps in order
 * @returns those on which something is, each device's in order
 */
export function ticketsOf(taps: readonly TappedEntry[]): readonly Ticket[] {
  const tickets: Ticket[] = [];
  const open = new Map<string, TicketLine[]>();
  const closing = new Set<string>();
  for (const tapped of taps) {
    const { device } = tapped;
    const { tap } = tapped.body;
    let lines = open.get(device);
    if (lines === undefined) {
      lines = [];
      open.set(device, lines);
    }
    if (tap.what === 'next') {
      closing.add(device);
      tickets.push({ device, lines, isOpen: false, isUnclosed: false });
      open.delete(device);
    } else if (tap.what === 'pay') {
      for (const [at, line] of lines.entries()) lines[at] = { ...line, pay: tap.pay };
    } else {
      const line = lineOf(tapped);
      if (line !== null) lines.push(line);
    }
  }
  for (const [device, lines] of open)
    tickets.push({ device, lines, isOpen: true, isUnclosed: !closing.has(device) });
  return tickets.filter(({ lines }) => lines.length > 0);
}

// Helpers

/** @returns the line that a tap puts on the ticket; null for what no customer pays. */
function lineOf({ id, at, body: { tap, currency } }: TappedEntry): TicketLine | null {
  // Each field by its name: thousands of them are made at each tap, and a spread takes three times as long.
  const line = (
    goods: StallGoods | null,
    setId: string | null,
    pieces: number,
    minor: number,
    pay: StallPay,
    back: StallGoods | null = null,
    joinsSet = true,
  ) => ({
    id,
    goods,
    back,
    setId,
    pieces,
    minor,
    joinsSet,
    currency,
    pay,
    at,
  });
  switch (tap.what) {
    case 'sale':
      return line(
        tap.goods,
        null,
        1,
        tap.minor,
        tap.pay,
        null,
        tap.isOwnPrice !== true || tap.joinsSet === true,
      );
    case 'set':
      return line(null, tap.setId, 0, -tap.minor, tap.pay);
    case 'exchange':
      return line(tap.out, null, 0, tap.minor, tap.pay, tap.back);
    case 'refund':
      return line(tap.goods, null, -1, -tap.minor, tap.pay);
    default:
      return null;
  }
}
