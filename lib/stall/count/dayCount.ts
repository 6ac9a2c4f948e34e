import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StallPay } from '@/shared/schemas/stallEvents';
import type { SellingStretch } from './sellingStretches';

/** What became of some goods through a day. Pieces. */
export interface GoodsCount extends StallGoods {
  /** As planned, and what was put out later. */
  readonly brought: number;
  /** Seconds among them. */
  readonly sold: number;
  readonly given: number;
  /** Spoiled on the day; `seconds` of them are kept at their own grade. */
  readonly damaged: number;
  readonly seconds: number;
  /** Of the sold, spoiled ones that went for less; those of the day are not among the damaged any more. */
  readonly secondsSold: number;
  /** Seconds kept from before that came along; they are not among `brought`. */
  readonly keptBrought: number;
  /** Of the sold, those that were of them: they went first. */
  readonly keptSold: number;
  /** Below 0 where more was tapped than was brought. */
  readonly left: number;
  /** Asked for when none was left. */
  readonly asked: number;
  readonly putBack: number;
  /** Of its sales, before sets are taken off; whole minor units. */
  readonly revenueMinor: number;
  /** When the last one was sold, ms since 1970; null where none was. */
  readonly lastSoldAt: number | null;
  /** What a piece cost in the hour in which the last one was sold, whole minor units; null where none was, or the plan has no such goods. */
  readonly lastPriceMinor: number | null;
  /** From one refill of the bare table to the next, in order; one at least. */
  readonly stretches: readonly SellingStretch[];
}

/** What one customer bought on one device. */
export interface TicketCount {
  readonly device: string;
  /** The first ticket of a device is 1. */
  readonly number: number;
  readonly pieces: number;
  /** By way of paying, whole minor units; with tax; of cash as it is paid in coins. */
  readonly cashMinor: number;
  readonly cardMinor: number;
  readonly at: number;
  /** Nobody tapped *next customer* since. */
  readonly isOpen: boolean;
  /** Nobody ever tapped it on this device, so that all its customers are on this one. */
  readonly isUnclosed: boolean;
  /** Its cash was rounded to coins once for many customers, so they may have paid otherwise. */
  readonly isRoundedOnce: boolean;
}

/** What was tapped in a currency that is not the plan's: its pieces are counted, its money is added to nothing. */
export interface ForeignCount {
  readonly currency: string;
  readonly pieces: number;
  readonly minor: number;
}

/** How long a weather held while the stall was open on a day. */
export interface WeatherMinutes {
  readonly day: string;
  readonly weatherId: string;
  readonly minutes: number;
}

export interface DayCount {
  /** Of the taps of the day that count, of all kinds, each once and in the one order. */
  readonly tapIds: readonly string[];
  /** Of these, so large that the sums of the day could not be kept exact: their pieces are counted, their money is not. */
  readonly setAside: number;
  readonly goods: readonly GoodsCount[];
  readonly pieces: number;
  readonly tickets: readonly TicketCount[];
  /** False where on some device nobody tapped *next customer*, so that its tickets are to be asked or estimated. */
  readonly hasTickets: boolean;
  /** All whole minor units. What prices and sets come to as they are written, less refunds. */
  readonly writtenMinor: number;
  /** Takings before cash is rounded: as written, and tax added ticket by ticket where prices are without it. */
  readonly grossMinor: number;
  /** Cash as it came in coins, rounded ticket by ticket, and what the rounding added or took. */
  readonly cashMinor: number;
  readonly cashRoundingMinor: number;
  readonly cardMinor: number;
  /** Taken off for sets, 0 or more. */
  readonly reductionsMinor: number;
  /** Into the tin less out of it, beside sales. */
  readonly tinMinor: number;
  /** Of what went out of it, what was spent on the day. */
  readonly spentMinor: number;
  /** The same by what it was spent on, in the words of whoever noted it first; an empty text where nobody noted what. */
  readonly spentOn: readonly { readonly words: string; readonly minor: number }[];
  readonly foreign: readonly ForeignCount[];
  /** Pieces sold by the hour of the device's clock, in order; after midnight 24 and more. What came back is not taken off. */
  readonly hours: readonly { readonly day: string; readonly hour: number; readonly pieces: number }[];
  /** Asked for and not among the goods, in the words of whoever asked first; an empty text where nobody noted what. */
  readonly askedFor: readonly { readonly words: string; readonly count: number }[];
  readonly putBack: number;
  readonly visitors: number;
  /** As told last. */
  readonly weatherId: string | null;
  /** Of days on which a weather was told, in their order. */
  readonly weatherMinutes: readonly WeatherMinutes[];
  readonly notes: readonly { readonly id: string; readonly at: number; readonly words: string }[];
  readonly leads: readonly { readonly id: string; readonly at: number; readonly words: string }[];
  /** The way of paying that was told last on any device; card where none was. */
  readonly pay: StallPay;
}
