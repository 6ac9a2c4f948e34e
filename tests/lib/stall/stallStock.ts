import { carMoves } from '@/lib/stall/car/carMoves';
import { type ClosedRow, type CloseStock, closeMoves } from '@/lib/stall/evening/closeMoves';
import { foldStock, type Pile } from '@/lib/stock/foldStock';
import type { StockEntry } from '@/lib/stock/stockEntry';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StockCount, StockMove, StockTransfer } from '@/shared/schemas/stock';

export const goods: StallGoods = { jobId: 'fair-shirts', lineId: 'fern', size: 'L' };
export const item = { kind: 'finished', ...goods } as const;
export const home = { place: { kind: 'home' }, grade: 'first' } as const;
export const van = { place: { kind: 'van' }, grade: 'first' } as const;

/** Of 30 brought 25 were sold and 5 are left. */
export const thirty: ClosedRow = {
  ...{ goods, brought: 30, sold: 25, given: 0, damaged: 0, seconds: 0, counted: 5 },
};

/** The stock of one maker, noted entry by entry. */
export class StallStock {
  readonly #entries: StockEntry[] = [];
  readonly #closes = new Map<string, { id: string; withdrawn: boolean }[]>();

  /** @param at ms since 1970; after all others unless told */
  count(quantity: number, where: Pick<StockCount, 'place' | 'grade'> = home, at?: number): void {
    this.#add('stockCount', { item, ...where, quantity }, at);
  }
  made(quantity: number, reference: StockMove['reference'] = null): void {
    this.#add('stockMove', { item, ...home, quantity, cause: 'made', reference, unitCost: null });
  }
  toShop(quantity: number): void {
    const to = { item, place: { kind: 'shop', name: 'Corner' }, grade: 'first' } as const;
    this.#add('stockTransfer', { from: { item, ...home }, to, quantity });
  }
  /** Fixes a plan. @returns what it moves, for a device that fixed it without knowing of the rest */
  load(day: string, bring: number, moves = this.loadsOf(day, bring)): readonly StockMove[] {
    for (const body of moves) this.#add('stockMove', body);
    return moves;
  }
  loadsOf(day: string, bring: number): readonly StockMove[] {
    return carMoves(day, [{ ...goods, bring }], { piles: this.piles, moves: this.moves });
  }
  closesOf(day: string, row: ClosedRow, id: string): readonly StockMove[] {
    return closeMoves([row], this.closeStock(day), id);
  }
  /** Closes a day, or corrects its close. @returns what that moves */
  close(day: string, row: ClosedRow, id: string, moves = this.closesOf(day, row, id)): readonly StockMove[] {
    this.#closes.set(day, [...(this.#closes.get(day) ?? []), { id, withdrawn: false }]);
    for (const body of moves) this.#add('stockMove', body);
    return moves;
  }
  closeStock(day: string): CloseStock {
    const closes = this.#closes.get(day) ?? [];
    return { stallDayId: day, piles: this.piles, moves: this.moves, closes };
  }
  get moves() {
    return this.#entries.flatMap((entry) => (entry.kind === 'stockMove' ? [entry] : []));
  }
  get piles(): readonly Pile[] {
    return foldStock(this.#entries);
  }
  /** What lies where; a place that no entry speaks of is left out. */
  get lying(): Readonly<Record<string, number>> {
    return Object.fromEntries(
      this.piles.map(({ place, grade, quantity }) => [`${place.kind} ${grade}`, quantity]),
    );
  }

  #add(
    ...[kind, body, at]:
      | ['stockMove', StockMove]
      | ['stockTransfer', StockTransfer]
      | ['stockCount', StockCount, (number | undefined)?]
  ): void {
    const count = this.#entries.length + 1;
    const written = { id: `devicea1-${count}`, device: 'devicea1', version: 1, count, at: at ?? count };
    this.#entries.push({ ...written, kind, body } as StockEntry);
  }
}
