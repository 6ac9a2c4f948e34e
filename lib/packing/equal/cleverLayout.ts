import { at } from '@/lib/packing/at';
import { fillSearch } from '@/lib/packing/fillSearch';
import { type BlockPlace, blockLayout } from './blockLayout';
import { cutPositions } from './cutPositions';

interface Sides {
  readonly long: number;
  readonly short: number;
}

/** Pinwheels tried at most: a few milliseconds. */
const BLOCK_STEPS = 50_000;

/** The same where one more piece would all but fill the sheet. */
const CLOSE_BLOCK_STEPS = 800_000;

/** Skylines looked at, at most: some 20 ms. */
const FILL_STEPS = 10_000;

/** Share of a piece: where one more would leave less than this free, a longer search may well find it. */
const CLOSE = 0.6;

/**
 * Looks for more equal pieces than the plain layouts hold: blocks within blocks and, where the paper could just
 * hold one more, any layout at all.
 *
 * @param room long and short side in ticks; places count x along the long one
 * @param piece its sides with the gutter, ticks
 * @param known pieces of the best plain layout
 * @returns null where no better one is found
 */
export function cleverLayout(bin: Sides, piece: Sides, known: number): readonly BlockPlace[] | null {
  if (known === 0 || piece.long === piece.short) return null;
  const cuts = cutPositions(bin.long, piece);
  if (cuts === null) return null;
  const long = cuts.largestWithin(bin.long);
  const short = cuts.largestWithin(bin.short);
  const area = at(cuts.lengths, long) * at(cuts.lengths, short);
  const each = piece.long * piece.short;
  // A hair more, as areas beyond 2^53 are not exact.
  const most = Math.floor(area / each + 1e-9);
  if (known >= most) return null;
  const isClose = (count: number) => {
    const spare = area - count * each;
    return spare >= 0 && spare <= CLOSE * each;
  };
  const steps = isClose(most) ? CLOSE_BLOCK_STEPS : BLOCK_STEPS;
  const blocks = blockLayout({ width: long, height: short }, piece, cuts, { enough: most, steps });
  const best = Math.max(known, blocks.length);
  const filled = isClose(best + 1) ? fill(bin, piece, best + 1) : null;
  return filled ?? (blocks.length > known ? blocks : null);
}

/** Rows along the short side are fewer and are proved full or not sooner. */
function fill(bin: Sides, piece: Sides, count: number): readonly BlockPlace[] | null {
  const kind = { width: piece.long, height: piece.short, count, mayTurn: true };
  const places = fillSearch({ width: bin.short, height: bin.long }, [kind], FILL_STEPS);
  return places?.map(({ x, y, width }) => ({ x: y, y: x, lying: width === piece.short })) ?? null;
}
