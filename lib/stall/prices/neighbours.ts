import { pricesBeside } from './pricesBeside';

/** A price that could stand in the place of another, and what it would do if as much were sold. Currency units. */
export interface Neighbour {
  readonly price: number;
  readonly which: 'below' | 'now' | 'above';
  /** What a piece leaves, its making paid. */
  readonly margin: number;
  /** Of the whole day with own pay and making; null where a piece leaves nothing then. */
  readonly breakEvenPieces: number | null;
  /** What the day would earn more, or less, at unchanged sales. */
  readonly more: number;
  /** Whether it is more than the maker thinks the market bears. */
  readonly isAboveCeiling: boolean;
}

export interface Neighbours {
  readonly rows: readonly Neighbour[];
  /** The one that is recommended: up, unless that is above the ceiling. */
  readonly recommended: Neighbour['which'];
}

/** Goods of one price. */
interface AtPrice {
  readonly price: number;
  /** Most that the market is thought to bear; null where nobody said. */
  readonly ceiling: number | null;
  readonly goods: readonly {
    /** Pieces expected to be sold. */
    readonly sold: number;
    /** Of a piece: what its making and its packaging take. */
    readonly takes: number;
    readonly keptOf: (price: number) => number;
  }[];
}

/** The day that these prices are part of. */
interface OfDay {
  readonly sold: number;
  /** What all goods leave in the mix that the break-even rests on, a piece. */
  readonly contributionPerPiece: number;
  /** To be earned: costs of the day and of the batch, own pay among it. */
  readonly fixed: number;
}

/**
 * A price between its two neighbours on the endings that the maker writes.
 *
 * @param step prices end on whole multiples of this, currency units, more than 0
 */
export function neighbours(at: AtPrice, day: OfDay, step: number): Neighbours {
  const { below, above } = pricesBeside(at.price, step);
  const rows = [
    ...(below > 0 ? [neighbour(at, day, 'below', below)] : []),
    neighbour(at, day, 'now', at.price),
    neighbour(at, day, 'above', above),
  ];
  const bearable = rows.filter(({ isAboveCeiling }) => !isAboveCeiling);
  return { rows, recommended: (bearable.at(-1) ?? rows[0])?.which ?? 'now' };
}

// Helpers

function neighbour(
  { price: now, ceiling, goods }: AtPrice,
  day: OfDay,
  which: Neighbour['which'],
  price: number,
): Neighbour {
  const sold = goods.reduce((sum, one) => sum + one.sold, 0);
  const more = goods.reduce(
    (sum, { sold: pieces, keptOf }) => sum + pieces * (keptOf(price) - keptOf(now)),
    0,
  );
  const left = goods.map(({ sold: pieces, takes, keptOf }) => ({ pieces, leaves: keptOf(price) - takes }));
  const perPiece = day.contributionPerPiece + (day.sold > 0 ? more / day.sold : 0);
  return {
    price,
    which,
    margin: mean(left, sold),
    breakEvenPieces: perPiece > 0 ? day.fixed / perPiece : null,
    more,
    isAboveCeiling: ceiling !== null && price > ceiling,
  };
}

/** By the pieces sold; of goods that sell nothing each counts the same. */
function mean(rows: readonly { readonly pieces: number; readonly leaves: number }[], sold: number): number {
  if (sold > 0) return rows.reduce((sum, { pieces, leaves }) => sum + pieces * leaves, 0) / sold;
  return rows.reduce((sum, { leaves }) => sum + leaves, 0) / Math.max(1, rows.length);
}
