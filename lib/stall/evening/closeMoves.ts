import type { Pile } from '@/lib/stock/foldStock';
import { isReady } from '@/lib/stock/isReady';
import type { StockEntry } from '@/lib/stock/stockEntry';
import type { StockCause, StockGrade, StockMove, StockPlace } from '@/shared/schemas/stock';
import type { StockRow } from './stockRows';

/**
 * What a close does to the stock: what was sold, given or spoiled leaves the car, what is left comes home, seconds in
 * their own grade. Of goods of which nobody ever noted anything only what was counted comes home: nothing is invented.
 * Goods that were not counted stay in the car.
 *
 * @param piles without the moves of earlier closes of the day, which this one takes back
 * @param paperId the close itself, by which its moves are found again
 */
export const closeMoves = (
  rows: readonly StockRow[],
  piles: readonly Pile[],
  paperId: string,
): readonly StockMove[] => rows.flatMap((row) => movesOf(row, lyingOf(row, piles), paperId));

/** @returns the moves that closes of a day made, among all of the stock. */
export const movesOfCloses = <Of extends StockEntry>(entries: readonly Of[], paperIds: readonly string[]) =>
  entries.filter(
    (entry) =>
      entry.kind === 'stockMove' &&
      entry.body.reference?.kind === 'paper' &&
      paperIds.includes(entry.body.reference.id),
  );

/** @returns whether more than one close of a day holds moves in force: two devices closed it before they met. */
export const isBookedTwice = (entries: readonly StockEntry[], paperIds: readonly string[]): boolean =>
  paperIds.filter((id) => movesOfCloses(entries, [id]).length > 0).length > 1;

// Helpers

interface Known {
  /** First grade; null where no entry speaks of it. */
  readonly car: number | null;
  readonly home: number | null;
}

function lyingOf({ goods }: StockRow, piles: readonly Pile[]): Known {
  const own = piles.filter(
    ({ item }) =>
      item.kind === 'finished' &&
      item.jobId === goods.jobId &&
      item.lineId === goods.lineId &&
      item.size === goods.size,
  );
  const car = own.find(({ place, grade }) => place.kind === 'van' && grade === 'first');
  return { car: car?.quantity ?? null, home: own.find(isReady)?.quantity ?? null };
}

function movesOf(row: StockRow, { car, home }: Known, paperId: string): readonly StockMove[] {
  const { jobId, lineId, size } = row.goods;
  const item = { kind: 'finished', jobId, lineId, size } as const;
  const reference = { kind: 'paper', id: paperId };
  const move = (place: StockPlace['kind'], grade: StockGrade, quantity: number, cause: StockCause) =>
    quantity === 0 || place === 'shop'
      ? []
      : [{ item, place: { kind: place }, grade, quantity, cause, reference, unitCost: null }];
  const back = row.counted ?? 0;
  const seconds = move('home', 'second', row.seconds, 'returned');
  if (car === null) return [...move('home', 'first', back, 'returned'), ...seconds];
  const missing = row.counted === null ? 0 : row.missing;
  return [
    // Pressed overnight, or before and never noted: whatever was brought was there.
    ...move('van', 'first', Math.max(0, row.brought - car), 'made'),
    ...move('home', 'first', Math.max(0, -(home ?? 0)), 'made'),
    ...move('van', 'first', -row.sold, row.sold < 0 ? 'returned' : 'sold'),
    ...move('van', 'first', -row.given, 'given'),
    ...move('van', 'first', -row.damaged, 'scrapped'),
    ...move('van', 'first', -missing, missing > 0 ? 'lost' : 'returned'),
    ...move('van', 'first', -back, 'returned'),
    ...move('home', 'first', back, 'returned'),
    ...seconds,
  ];
}
