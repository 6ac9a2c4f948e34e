import type { StallPay } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { type SetOnTicket, setOffers } from './setOffers';
import { type TappedEntry, tapsOfDay } from './tappedEntry';
import { ticketsOf } from './ticketLines';
import { payingOf } from './ticketMoney';
import { withinReach } from './withinReach';

/** What a device is selling now. */
export interface OpenTicket {
  /** Pieces that go, less those that came back. */
  readonly pieces: number;
  /** What the customer pays, with tax where it is added: by card as it is due, in cash in coins; whole minor units. */
  readonly minor: number;
  /** False while nothing is on it. */
  readonly isBegun: boolean;
  readonly pay: StallPay;
  /** Nobody tapped *next customer* on this device yet, and more is on it than one customer buys. */
  readonly isOfMany: boolean;
  /** None while it is of many: a pair is no pair of two customers. */
  readonly sets: readonly SetOnTicket[];
  /** The last tap of the device that counts, which undo takes back; null where there is none. */
  readonly last: TappedEntry | null;
}

/** The first customer of a device hardly buys more (the product’s own choice). */
const MOST_OF_ONE = 6;

/** @returns the ticket that is open on a device; `pay` is what it was told last, card where nothing. */
export function openTicket(plan: StallPlan, taps: readonly TappedEntry[], device: string): OpenTicket {
  const own = tapsOfDay(taps, plan.stallDayId).filter((tap) => tap.device === device);
  const open = withinReach(sinceLastCustomer(own), plan.currency);
  const lines = ticketsOf(open.taps)[0]?.lines ?? [];
  const paid = payingOf(plan);
  const pieces = lines.reduce((sum, line) => sum + line.pieces, 0);
  const isOfMany = pieces > MOST_OF_ONE && own.every(({ body }) => body.tap.what !== 'next');
  return {
    pieces,
    minor: paid(lines, 'cash').paid + paid(lines, 'card').paid,
    isBegun: lines.length > 0,
    pay: payOf(own),
    isOfMany,
    sets: isOfMany ? [] : setOffers(plan, lines),
    last: own.at(-1) ?? null,
  };
}

// Helpers

const sinceLastCustomer = (taps: readonly TappedEntry[]): readonly TappedEntry[] =>
  taps.slice(taps.findLastIndex(({ body }) => body.tap.what === 'next') + 1);

function payOf(taps: readonly TappedEntry[]): StallPay {
  const told = taps.findLast(({ body }) => body.tap.what === 'sale' || body.tap.what === 'pay');
  return told !== undefined && 'pay' in told.body.tap ? told.body.tap.pay : 'card';
}
