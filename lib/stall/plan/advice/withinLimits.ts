import type { GoodsReckoned } from '@/lib/stall/plan/goodsReckoned';
import { filledChoice, improvedChoice, type Patience } from './filledChoice';
import { type Choice, fits, nextMoves, pricedChoice } from './limitedChoice';
import { type LimitedDesign, limitedDesigns, type Room } from './limitedDesigns';

/** What must do for all pieces; null where nothing does. */
export interface BringLimits {
  readonly tablePieces: number | null;
  /** Currency units for materials and packaging, what the day and its batch take set aside. */
  readonly cash: number | null;
}

export interface Limited {
  /** By the order of the goods. */
  readonly bring: readonly number[];
  /** Which limit trims it; null where none does. */
  readonly trimmedFor: 'tablePieces' | 'cash' | null;
  /** At most what a better choice within the limits could earn more, currency units; 0 where there is none. */
  readonly gap: number;
  /** Where something would be brought and nothing fits: which limit keeps it out, and the least of it that does not. */
  readonly nothingFits: { readonly limit: 'tablePieces' | 'cash'; readonly least: number } | null;
}

const NOISE = 1e-9;
const HALVINGS = 60;
/** Prices that differ by no more than this part decide alike for all but pieces that earn the same. */
const CLOSE = 2 ** -40;
/** No room is worth more than this to any piece. */
const HIGHEST_PRICE = 1e12;
/** Moves that are weighed to exchange pieces, some hundredths of a second; what that leaves is told as the gap. */
const MOST_WEIGHED = 300_000;
const free: Room = { pieces: 0, cash: 0 };

/**
 * Trims the worst pieces first until both limits hold: each piece must earn a price for the room it takes, and the price
 * is raised until what is left fits. What room that leaves is filled by the best that fits.
 *
 * @param wanted pieces without limits, by the order of the goods
 * @param leftOut designs, by `designKey`, that come along without the sizes that a design needs
 */
export function withinLimits(
  goods: readonly GoodsReckoned[],
  wanted: readonly number[],
  { tablePieces, cash }: BringLimits,
  leftOut: ReadonlySet<string> = new Set(),
): Limited {
  const designs = limitedDesigns(goods, wanted, leftOut);
  const priced = (price: Room) => pricedChoice(designs, price, goods.length);
  const unlimited = priced(free);
  const room: Room = {
    pieces: tablePieces ?? Number.POSITIVE_INFINITY,
    cash: cash === null ? Number.POSITIVE_INFINITY : Math.max(0, cash),
  };
  if (fits(unlimited, room)) return { bring: unlimited.bring, trimmedFor: null, gap: 0, nothingFits: null };
  const tried = directionsOf(unlimited, room).map((direction) => raised(priced, direction, room));
  const bound = Math.min(...tried.map((one) => one.bound));
  const patience: Patience = { left: MOST_WEIGHED, bound };
  const filled = tried
    .map(({ kept }) => filledChoice(designs, kept, room, patience))
    .toSorted((one, other) => other.worth - one.worth);
  const best = filled
    .map((choice) => improvedChoice(designs, choice, room, patience))
    .reduce((top, next) => (next.worth > top.worth ? next : top));
  const gap = bound - best.worth;
  return {
    bring: best.bring,
    trimmedFor: tighter(unlimited, room),
    gap: gap > NOISE ? gap : 0,
    nothingFits: best.takes.pieces > 0 ? null : nothingFits(designs, room, goods.length),
  };
}

// Helpers

/** What each design begins with; where none of that pays for itself, all that it would come along with. */
function nothingFits(designs: readonly LimitedDesign[], room: Room, count: number): Limited['nothingFits'] {
  const first = designs.flatMap((design) => nextMoves(design, [])).filter(({ worth }) => worth > NOISE);
  const begun = first.length > 0 ? first : designs.map((design) => pricedChoice([design], free, count));
  const least = (of: keyof Room, among: readonly Pick<Choice, 'takes'>[]) =>
    Math.min(...among.map(({ takes }) => takes[of]));
  const placed = begun.filter(({ takes }) => takes.pieces <= room.pieces);
  if (placed.length === 0) return { limit: 'tablePieces', least: least('pieces', begun) };
  return { limit: 'cash', least: least('cash', placed) };
}

/** The limit of which more is wanted than there is, by the larger share. */
const tighter = ({ takes }: Choice, room: Room): 'tablePieces' | 'cash' =>
  takes.pieces * room.cash > takes.cash * room.pieces || room.cash === Number.POSITIVE_INFINITY
    ? 'tablePieces'
    : 'cash';

/** By which prices rise: of places alone, of money alone, of both. */
function directionsOf({ takes }: Choice, room: Room): readonly Room[] {
  const places = { pieces: 1 / Math.max(1, takes.pieces), cash: 0 };
  const money = { pieces: 0, cash: 1 / Math.max(NOISE, takes.cash) };
  if (room.cash === Number.POSITIVE_INFINITY) return [places];
  if (room.pieces === Number.POSITIVE_INFINITY) return [money];
  return [places, money, { pieces: places.pieces, cash: money.cash }];
}

/**
 * The lowest prices in a direction with which what earns them fits.
 *
 * @returns that choice, and what no choice that fits can earn more than
 */
function raised(
  priced: (price: Room) => Choice,
  direction: Room,
  room: Room,
): { readonly kept: Choice; readonly bound: number } {
  let bound = Number.POSITIVE_INFINITY;
  const at = (times: number) => {
    const price = { pieces: direction.pieces * times, cash: direction.cash * times };
    const choice = priced(price);
    bound = Math.min(bound, choice.worth + unused(price, room, choice));
    return choice;
  };
  let [low, high] = [0, 1];
  let kept = at(high);
  while (!fits(kept, room) && high < HIGHEST_PRICE) {
    [low, high] = [high, high * 2];
    kept = at(high);
  }
  for (let turn = 0; turn < HALVINGS && high - low > high * CLOSE; turn += 1) {
    const middle = (low + high) / 2;
    const choice = at(middle);
    if (fits(choice, room)) [high, kept] = [middle, choice];
    else low = middle;
  }
  return { kept, bound };
}

/** What the room that a choice leaves is worth at these prices; what has no limit has no price. */
const unused = (price: Room, room: Room, { takes }: Choice): number =>
  (price.pieces === 0 ? 0 : price.pieces * (room.pieces - takes.pieces)) +
  (price.cash === 0 ? 0 : price.cash * (room.cash - takes.cash));
