import type { MinorUnits } from '@/shared/money';
import { roundCash } from '@/shared/roundCash';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StallPay } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { goodsKey } from './goodsKey';
import { type TappedEntry, tapsOfDay } from './tappedEntry';
import { type TicketLine, ticketsOf } from './ticketLines';
import { paidBy } from './ticketMoney';

/** A set of the plan that what is on a ticket completes. */
interface SetOnTicket {
  readonly setId: string;
  readonly name: string;
  readonly pieces: number;
  /** Taken off what the pieces come to, above 0; whole minor units. */
  readonly minor: number;
  readonly pay: StallPay;
}

/** What a device is selling now. */
export interface OpenTicket {
  /** Pieces that go, less those that came back. */
  readonly pieces: number;
  /** What the customer pays: by card as written, in cash as it is paid in coins; whole minor units. */
  readonly minor: number;
  /** False while nothing is on it. */
  readonly isBegun: boolean;
  readonly pay: StallPay;
  readonly sets: readonly SetOnTicket[];
  /** The last tap of the device that counts, which undo takes back; null where there is none. */
  readonly last: TappedEntry | null;
}

/** @returns the ticket that is open on a device; `pay` is what it was told last, card where nothing. */
export function openTicket(plan: StallPlan, taps: readonly TappedEntry[], device: string): OpenTicket {
  const own = tapsOfDay(taps, plan.stallDayId).filter((tap) => tap.device === device);
  const lines = ticketsOf(sinceLastCustomer(own))[0]?.lines ?? [];
  const cash = roundCash(paidBy(lines, plan.currency, 'cash') as MinorUnits, plan.currency);
  return {
    pieces: lines.reduce((sum, line) => sum + line.pieces, 0),
    minor: cash + paidBy(lines, plan.currency, 'card'),
    isBegun: lines.length > 0,
    pay: payOf(own),
    sets: setsOn(plan, lines),
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

/** The dearest pieces first, so that what a set saves does not hang on the order they were tapped in. */
function setsOn(plan: StallPlan, lines: readonly TicketLine[]): readonly SetOnTicket[] {
  const ranges = new Map(plan.goods.map((goods) => [goodsKey(goods), goods.rangeId]));
  const dearest = (set: Offer, among: readonly TicketLine[]): readonly TicketLine[] =>
    among.filter(({ goods }) => goods !== null && fits(set, goods, ranges)).slice(0, set.pieces);
  const sold = lines
    .filter((line) => line.pieces > 0 && line.currency === plan.currency)
    .toSorted((one, other) => other.minor - one.minor);
  const alone = lines.reduce<readonly TicketLine[]>((left, { setId }) => {
    const set = plan.sets.find(({ id }) => id === setId);
    const used = set === undefined ? [] : dearest(set, left);
    return left.filter((line) => !used.includes(line));
  }, sold);
  return plan.sets.flatMap((set): readonly SetOnTicket[] => {
    const pieces = dearest(set, alone);
    const minor = pieces.reduce((sum, line) => sum + line.minor, 0) - set.price;
    const pay = pieces.at(-1)?.pay ?? 'card';
    if (pieces.length < set.pieces || minor <= 0) return [];
    return [{ setId: set.id, name: set.name, pieces: set.pieces, minor, pay }];
  });
}

type Offer = StallPlan['sets'][number];

function fits({ rangeIds, sizes }: Offer, goods: StallGoods, ranges: ReadonlyMap<string, string>): boolean {
  const range = ranges.get(goodsKey(goods));
  return range !== undefined && rangeIds.includes(range) && (sizes === null || sizes.includes(goods.size));
}
