import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { Tap } from '@/shared/schemas/stallEvents';
import type { TappedEntry } from './tappedEntry';

/** How long some goods lay on the table: from the beginning, or from when more was put out, until they were gone. */
export interface SellingStretch {
  /** When more was put out after they had been gone, ms since 1970; null where it began with the day. */
  readonly fromAt: number | null;
  /** Pieces sold in it, less those that came back. */
  readonly sold: number;
  /** When the last one was sold, ms since 1970; null where none was. */
  readonly lastSoldAt: number | null;
  /** When none was left by the taps, ms since 1970; null where some are. A later one has begun where more was put out. */
  readonly goneAt: number | null;
}

/** Goods by their key. */
type Brought = ReadonlyMap<
  string,
  {
    /** In all: as planned, and what was put out later. */
    readonly brought: number;
    /** Seconds from before. They lie beside the others, and what sells them says nothing of those. */
    readonly keptBrought: number;
  }
>;

/**
 * The stretches in which goods were sold, one after the other; one at least for each of the goods. A piece that comes
 * back is taken off the one it comes back in, and begins none.
 *
 * @param taps in order; a refill by an earlier plan was put out as well
 */
export function sellingStretches(
  taps: readonly TappedEntry[],
  brought: Brought,
): ReadonlyMap<string, readonly SellingStretch[]> {
  const refilled = new Map<string, number>();
  for (const { body } of taps) {
    if (body.tap.what !== 'refill') continue;
    const key = goodsKey(body.tap.goods);
    refilled.set(key, (refilled.get(key) ?? 0) + body.tap.pieces);
  }
  const lying = new Map<string, Lying>();
  for (const [key, { brought: pieces, keptBrought }] of brought)
    lying.set(key, begun(pieces - (refilled.get(key) ?? 0), keptBrought));
  for (const { at, body } of taps) {
    for (const [goods, happened] of happenedTo(body.tap)) {
      const key = goodsKey(goods);
      const own = lying.get(key) ?? begun(0, 0);
      lying.set(key, own);
      happened(own, at);
    }
  }
  return new Map([...lying].map(([key, { stretches }]) => [key, stretches]));
}

// Helpers

type Stretch = { -readonly [Key in keyof SellingStretch]: SellingStretch[Key] };

/** Some goods while they are followed through the day. */
interface Lying {
  left: number;
  /** Seconds from before that were not sold yet. */
  kept: number;
  /** Spoiled and kept as seconds, less those sold as such; below 0 where those were sold first. */
  seconds: number;
  now: Stretch;
  readonly stretches: Stretch[];
}

type Happened = (lying: Lying, at: number) => void;

function begun(left: number, kept: number): Lying {
  const now: Stretch = { fromAt: null, sold: 0, lastSoldAt: null, goneAt: null };
  return { left, kept, seconds: 0, now, stretches: [now] };
}

function happenedTo(tap: Tap): readonly (readonly [goods: StallGoods, happened: Happened])[] {
  switch (tap.what) {
    case 'sale':
      return [[tap.goods, tap.isSecond === true ? sellSecond : sell]];
    case 'refund':
      return [[tap.goods, comeBack]];
    case 'exchange':
      return [
        [tap.back, comeBack],
        [tap.out, sell],
      ];
    case 'given':
      return [[tap.goods, goAway]];
    case 'damaged':
      return [[tap.goods, tap.isSecond ? spoilToSecond : goAway]];
    case 'refill':
      return [[tap.goods, (lying, at) => putOut(lying, at, tap.pieces)]];
    default:
      return [];
  }
}

function goAway(lying: Lying, at: number): void {
  lying.left -= 1;
  if (lying.left <= 0) lying.now.goneAt = Math.max(at, lying.now.goneAt ?? at);
}

function noteSale({ now }: Lying, at: number): void {
  now.sold += 1;
  now.lastSoldAt = Math.max(at, now.lastSoldAt ?? at);
}

const sell: Happened = (lying, at) => {
  noteSale(lying, at);
  goAway(lying, at);
};

/** Those from before go first; one that was spoiled on the day left the others then. */
const sellSecond: Happened = (lying, at) => {
  if (lying.kept > 0) {
    lying.kept -= 1;
    return;
  }
  noteSale(lying, at);
  lying.seconds -= 1;
  if (lying.seconds < 0) goAway(lying, at);
};

const spoilToSecond: Happened = (lying, at) => {
  lying.seconds += 1;
  if (lying.seconds > 0) goAway(lying, at);
};

const comeBack: Happened = (lying) => {
  lying.left += 1;
  lying.now.sold -= 1;
  if (lying.left > 0) lying.now.goneAt = null;
};

function putOut(lying: Lying, at: number, pieces: number): void {
  const wasGone = lying.left <= 0;
  lying.left += pieces;
  if (!wasGone || lying.left <= 0) return;
  lying.now = { fromAt: at, sold: 0, lastSoldAt: null, goneAt: null };
  lying.stretches.push(lying.now);
}
