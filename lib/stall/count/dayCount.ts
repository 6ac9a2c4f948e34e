import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StallPay } from '@/shared/schemas/stallEvents';

/** What became of some goods through a day. Pieces. */
export interface GoodsCount extends StallGoods {
  /** As planned, and what was put out later. */
  readonly brought: number;
  readonly sold: number;
  readonly given: number;
  /** Spoiled on the day; `seconds` of them are kept at their own grade. */
  readonly damaged: number;
  readonly seconds: number;
  /** Below 0 where more was tapped than was brought. */
  readonly left: number;
  /** Asked for when none was left. */
  readonly asked: number;
  readonly putBack: number;
  /** Of its sales, before sets are taken off; whole minor units. */
  readonly revenueMinor: number;
  /** When the last one was sold, ms since 1970; null where none was. */
  readonly lastSoldAt: number | null;
}

/** What one customer bought on one device. */
export interface TicketCount {
  readonly device: string;
  /** The first ticket of a device is 1. */
  readonly number: number;
  readonly pieces: number;
  /** By way of paying, whole minor units; of cash as it is paid in coins. */
  readonly cashMinor: number;
  readonly cardMinor: number;
  readonly at: number;
}

export interface DayCount {
  readonly goods: readonly GoodsCount[];
  readonly pieces: number;
  readonly tickets: readonly TicketCount[];
  /** False where nobody tapped *next customer*, so that tickets are to be asked or estimated. */
  readonly hasTickets: boolean;
  /** All whole minor units. Takings before cash is rounded: what prices and sets come to, less refunds. */
  readonly grossMinor: number;
  /** Cash as it came in coins, rounded ticket by ticket, and what the rounding added or took. */
  readonly cashMinor: number;
  readonly cashRoundingMinor: number;
  readonly cardMinor: number;
  /** Taken off for sets, 0 or more. */
  readonly reductionsMinor: number;
  /** Into the tin less out of it, beside sales. */
  readonly tinMinor: number;
  /** Pieces by the hour of the device's clock, in order. */
  readonly hours: readonly { readonly day: string; readonly hour: number; readonly pieces: number }[];
  readonly askedFor: readonly { readonly words: string; readonly count: number }[];
  readonly putBack: number;
  readonly visitors: number;
  readonly weatherId: string | null;
  readonly notes: readonly { readonly id: string; readonly at: number; readonly words: string }[];
  readonly leads: readonly { readonly id: string; readonly at: number; readonly words: string }[];
  /** The way of paying that stays set, by the last sale; card where none was. */
  readonly pay: StallPay;
}
