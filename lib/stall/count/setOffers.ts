import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StallPay } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { goodsKey } from './goodsKey';
import type { TicketLine } from './ticketLines';

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
 * saved so far: so the ticket comes to the same in whatever order pieces and sets are tapped.
 */
export function setOffers(plan: StallPlan, lines: readonly TicketLine[]): readonly SetOnTicket[] {
  const own = lines.filter(({ currency }) => currency === plan.currency);
  const sold = own
    .filter(({ pieces, goods }) => pieces > 0 && goods !== null)
    .toSorted((one, other) => other.minor - one.minor);
  const taken = new Map(plan.sets.map(({ id }) => [id, own.filter(({ setId }) => setId === id).length]));
  const saved = own.reduce((sum, { setId, minor }) => (setId === null ? sum : sum - minor), 0);
  const ranges = new Map(plan.goods.map((goods) => [goodsKey(goods), goods.rangeId]));
  const claims = plan.sets.map((set) => ({
    set,
    fitting: sold.filter(({ goods }) => goods !== null && fits(set, goods, ranges)),
  }));
  return plan.sets.flatMap(({ id, name, pieces }): readonly SetOnTicket[] => {
    const counts = new Map(taken).set(id, (taken.get(id) ?? 0) + 1);
    const all = claimed(claims, counts);
    const minor = all === null ? 0 : all.savesMinor - saved;
    if (all === null || minor <= 0) return [];
    return [{ setId: id, name, pieces, minor, pay: all.lastPay.get(id) ?? 'card' }];
  });
}

// Helpers

type Offer = StallPlan['sets'][number];

interface Claim {
  readonly set: Offer;
  /** The dearest first. */
  readonly fitting: readonly TicketLine[];
}

interface Claimed {
  readonly savesMinor: number;
  /** How the cheapest piece of each set is paid. */
  readonly lastPay: ReadonlyMap<string, StallPay>;
}

/**
 * Each set takes the dearest pieces it fits, those that fit fewest first, so that a set of large shirts is not left
 * without by one that takes any.
 *
 * @returns null where there are not pieces enough
 */
function claimed(claims: readonly Claim[], counts: ReadonlyMap<string, number>): Claimed | null {
  const used = new Set<string>();
  const lastPay = new Map<string, StallPay>();
  let savesMinor = 0;
  for (const { set, fitting } of claims.toSorted((one, other) => one.fitting.length - other.fitting.length)) {
    const many = counts.get(set.id) ?? 0;
    const pieces = fitting.filter(({ id }) => !used.has(id)).slice(0, many * set.pieces);
    if (pieces.length < many * set.pieces) return null;
    for (const { id } of pieces) used.add(id);
    savesMinor += pieces.reduce((sum, { minor }) => sum + minor, 0) - many * set.price;
    const last = pieces.at(-1);
    if (last !== undefined) lastPay.set(set.id, last.pay);
  }
  return { savesMinor, lastPay };
}

function fits({ rangeIds, sizes }: Offer, goods: StallGoods, ranges: ReadonlyMap<string, string>): boolean {
  const range = ranges.get(goodsKey(goods));
  return range !== undefined && rangeIds.includes(range) && (sizes === null || sizes.includes(goods.size));
}
