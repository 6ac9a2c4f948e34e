import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StallPay } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { bestPacking, type Packed, packSets } from './packSets';
import type { TicketLine } from './ticketLines';
import { type TicketPiece, ticketPieces } from './ticketPieces';

/** A set of the plan that what is on a ticket completes. */
export interface SetOnTicket {
  readonly setId: string;
  readonly name: string;
  readonly pieces: number;
  /** Taken off what the pieces come to, above 0; whole minor units as prices are written. */
  readonly minor: number;
  readonly pay: StallPay;
}

/**
 * Sets that one tap more takes off a ticket. What is offered is what all its sets together should save, less what they
 * saved so far, and never more than the sets that make the ticket cheapest save. One is offered as long as the ticket
 * is dearer than that, so it comes to the same in whatever order pieces and sets are tapped.
 */
export function setOffers(plan: StallPlan, lines: readonly TicketLine[]): readonly SetOnTicket[] {
  const own = lines.filter(({ currency }) => currency === plan.currency);
  const pieces = ticketPieces(own)
    .filter(({ joinsSet }) => joinsSet)
    .toSorted((one, other) => other.minor - one.minor);
  const prices = pieces.map(({ minor }) => minor);
  const ranges = new Map(plan.goods.map((goods) => [goodsKey(goods), goods.rangeId]));
  const sets = plan.sets.map((set) => ({
    ...set,
    fits: pieces.map(({ goods }) => fits(set, goods, ranges)),
  }));
  const taken = plan.sets.map(({ id }) => own.filter(({ setId }) => setId === id).length);
  const saved = own.reduce((sum, { setId, minor }) => (setId === null ? sum : sum - minor), 0);
  const best = bestPacking(sets, prices);
  const due = best.savesMinor - saved;
  if (due <= 0) return [];
  const offers = plan.sets.flatMap((set, at): readonly SetOnTicket[] => {
    const packed = packSets(sets, prices, taken.with(at, (taken[at] ?? 0) + 1));
    const minor = packed === null ? 0 : Math.min(due, packed.savesMinor - saved);
    return packed === null || minor <= 0 ? [] : [offered(set, minor, payOf(packed, at, pieces))];
  });
  return offers.length > 0 ? offers : insteadOf(plan, best, taken, due, pieces);
}

// Helpers

type Offer = StallPlan['sets'][number];

const offered = ({ id, name, pieces }: Offer, minor: number, pay: StallPay): SetOnTicket => ({
  ...{ setId: id, name, pieces, minor, pay },
});

/** The sets tapped so far stand in the way of cheaper ones, which take off what is missing. */
function insteadOf(
  plan: StallPlan,
  best: Packed,
  taken: readonly number[],
  due: number,
  pieces: readonly TicketPiece[],
): readonly SetOnTicket[] {
  const isMissing = best.counts.map((count, at) => count > (taken[at] ?? 0));
  const at = isMissing.includes(true) ? isMissing.indexOf(true) : best.counts.findIndex((count) => count > 0);
  const set = plan.sets[at];
  return set === undefined ? [] : [offered(set, due, payOf(best, at, pieces))];
}

/** How the cheapest piece of a set is paid. */
const payOf = ({ held }: Packed, at: number, pieces: readonly TicketPiece[]): StallPay =>
  pieces[held[at]?.at(-1) ?? 0]?.pay ?? 'card';

function fits({ rangeIds, sizes }: Offer, goods: StallGoods, ranges: ReadonlyMap<string, string>): boolean {
  const range = ranges.get(goodsKey(goods));
  return range !== undefined && rangeIds.includes(range) && (sizes === null || sizes.includes(goods.size));
}
