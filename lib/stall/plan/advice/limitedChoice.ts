import { type Bundle, bundled, type LimitedDesign, type Room } from './limitedPieces';

/** How many of each goods, what they earn and take together. */
export interface Choice {
  /** By the order of the goods. */
  readonly bring: readonly number[];
  readonly worth: number;
  readonly takes: Room;
}

const NOISE = 1e-9;

/** @returns whether a choice does with the room. */
export const fits = ({ takes }: Pick<Choice, 'takes'>, room: Room): boolean =>
  takes.pieces <= room.pieces + NOISE && takes.cash <= room.cash + NOISE;

/**
 * What earns its price, design by design; one whose least pieces do not pay stays at home whole. No other choice earns
 * more over these prices.
 *
 * @param price of a piece's place and of a unit of money, in currency units
 * @param count of all goods
 */
export function pricedChoice(designs: readonly LimitedDesign[], price: Room, count: number): Choice {
  const none: Choice = {
    bring: Array.from({ length: count }, () => 0),
    worth: 0,
    takes: { pieces: 0, cash: 0 },
  };
  const over = ({ worth, takes }: Bundle) => worth - price.pieces * takes.pieces - price.cash * takes.cash;
  return designs.reduce((choice, { least, others }) => {
    const whole = bundled([...least, ...others.filter((piece) => over(piece) > -NOISE)]);
    return over(whole) > 0 ? added(choice, whole) : choice;
  }, none);
}

/** Adds what still fits, the best for its room first: a piece of a design that comes along, or the least of another. */
export function filledChoice(designs: readonly LimitedDesign[], from: Choice, room: Room): Choice {
  const share = ({ takes }: Bundle) => takes.pieces / room.pieces + takes.cash / room.cash;
  let choice = from;
  for (;;) {
    const [next] = designs
      .flatMap((design) => nextOf(design, choice))
      .filter((bundle) => bundle.worth > NOISE && fits(added(choice, bundle), room))
      .sort((a, b) => b.worth / (share(b) || NOISE) - a.worth / (share(a) || NOISE));
    if (next === undefined) return choice;
    choice = added(choice, next);
  }
}

/**
 * Puts another piece or design in the place of one, fills the room anew, and goes on while that earns more: what a price
 * for room leaves may be room that nothing fits.
 */
export function improvedChoice(designs: readonly LimitedDesign[], from: Choice, room: Room): Choice {
  let best = from;
  for (;;) {
    const [better] = designs
      .flatMap((design) => without(design, best))
      .flatMap((less) => {
        const others = designs.flatMap((design) => nextOf(design, less)).map((more) => added(less, more));
        return others.filter((choice) => fits(choice, room));
      })
      .map((choice) => filledChoice(designs, choice, room))
      .filter(({ worth }) => worth > best.worth + NOISE)
      .sort((a, b) => b.worth - a.worth);
    if (better === undefined) return best;
    best = better;
  }
}

// Helpers

function added({ bring, worth, takes }: Choice, more: Bundle, sign: 1 | -1 = 1): Choice {
  const next = [...bring];
  for (const goods of more.goods) next[goods] = (next[goods] ?? 0) + sign;
  return {
    bring: next,
    worth: worth + sign * more.worth,
    takes: {
      pieces: takes.pieces + sign * more.takes.pieces,
      cash: takes.cash + sign * more.takes.cash,
    },
  };
}

const placesOf = (pieces: readonly Bundle[]): readonly number[] => [
  ...new Set(pieces.flatMap(({ goods }) => goods)),
];

const piecesAt = (pieces: readonly Bundle[], place: number): readonly Bundle[] =>
  pieces.filter(({ goods }) => goods[0] === place);

function nextOf({ least, others }: LimitedDesign, { bring }: Choice): readonly Bundle[] {
  const all = [...least, ...others];
  const isAlong = all.some(({ goods: [place = -1] }) => (bring[place] ?? 0) > 0);
  if (!isAlong && least.length > 0) return [bundled(least)];
  return placesOf(all).flatMap((place) => piecesAt(all, place)[bring[place] ?? 0] ?? []);
}

/** A choice without the last piece of some goods of a design, or without all of it. */
function without({ least, others }: LimitedDesign, from: Choice): readonly Choice[] {
  const all = [...least, ...others];
  const brought = placesOf(all).map((place) => piecesAt(all, place).slice(0, from.bring[place] ?? 0));
  const last = brought.flatMap((pieces) => pieces.at(-1) ?? []).filter((piece) => !least.includes(piece));
  const whole = brought.flat();
  return [...last, ...(whole.length > 1 ? [bundled(whole)] : [])].map((less) => added(from, less, -1));
}
