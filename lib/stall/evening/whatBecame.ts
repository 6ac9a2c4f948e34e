import { broughtFromHome } from '@/lib/stall/broughtFromHome';
import { firstsSold } from './firstsSold';
import { leftOfBrought, type StockRow } from './stockRows';

/**
 * What brought pieces may become; kept as seconds is one of them, so `damaged` is what was spoiled else.
 * Seconds kept from before that were sold are a count of their own beside those brought.
 */
export type Became = 'sold' | 'keptSold' | 'left' | 'seconds' | 'given' | 'damaged' | 'missing';

/** Pieces, and how many of them were finished before the day. */
interface Pieces {
  readonly all: number;
  readonly fromHome: number;
}

/**
 * What became of the pieces of some goods. Those that were finished before the day are sold first, as in the plan; then
 * they are what is left, what was kept as seconds, and what was given, spoiled or is missing. Refills count as brought.
 */
export function whatBecame({ goods, brought, ...row }: StockRow): Readonly<Record<Became, Pieces>> {
  let rest = broughtFromHome(brought, goods.fromHome);
  const of = (all: number): Pieces => {
    const fromHome = Math.max(0, Math.min(rest, all));
    rest -= fromHome;
    return { all, fromHome };
  };
  // In this order: each takes what those before it left.
  const sold = of(firstsSold(row));
  const left = of(leftOfBrought(row));
  const seconds = of(row.seconds);
  const keptSold = { all: row.keptSold, fromHome: row.keptSold };
  const [given, damaged] = [of(row.given), of(row.damaged - row.seconds)];
  return { sold, keptSold, left, seconds, given, damaged, missing: of(row.missing) };
}
