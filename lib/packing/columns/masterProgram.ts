import { at } from '@/lib/packing/at';
import { inverseOf } from './inverseOf';

/** One way to fill a sheet, as how many boxes of each kind are on it. */
export type Counts = readonly number[];

/** How often a column is used; not whole as a rule. */
interface Use<Column> {
  readonly column: Column;
  readonly times: number;
}

/** Below this a difference is taken for the noise of sums. */
const NOISE = 1e-9;

/** Columns taken in before the inverse is worked out anew. */
const FRESH_AFTER = 40;

/**
 * The fewest sheets, parts of sheets among them, that hold at least as many boxes of each kind as asked: a linear
 * program with a row for each kind, to which columns are added one by one.
 *
 * Revised simplex on an inverse of the basis: P. Gilmore, R. Gomory, "A linear programming approach to the cutting
 * stock problem", Operations Research 9, 849-859, 1961. Equal ratios: the largest pivot, then the first row.
 */
export class MasterProgram<Column extends { readonly counts: Counts }> {
  readonly #size: number;
  /** The basis; null where boxes beyond those asked take up the row. */
  readonly #basis: (Column | null)[];
  readonly #surplusOf: number[];
  #inverse: Float64Array;
  #times: Float64Array;
  #entered = 0;

  /**
   * @param asked boxes of each kind, above 0
   * @param alone for each kind a column that holds no other kind
   */
  constructor(
    private readonly asked: Counts,
    alone: readonly Column[],
  ) {
    this.#size = asked.length;
    this.#basis = [...alone];
    this.#surplusOf = alone.map(() => -1);
    this.#inverse = new Float64Array(this.#size ** 2);
    this.#times = new Float64Array(this.#size);
    this.#refresh();
  }

  /** What one more box of each kind would cost, sheets. */
  get prices(): Float64Array {
    const size = this.#size;
    const prices = new Float64Array(size);
    for (let row = 0; row < size; row += 1) {
      if (at(this.#basis, row) === null) continue;
      for (let kind = 0; kind < size; kind += 1) {
        prices[kind] = at(prices, kind) + at(this.#inverse, row * size + kind);
      }
    }
    return prices;
  }

  get sheets(): number {
    return this.#times.reduce((sum, times, row) => sum + (at(this.#basis, row) === null ? 0 : times), 0);
  }

  get uses(): readonly Use<Column>[] {
    return this.#basis.flatMap((column, row) => {
      const times = at(this.#times, row);
      return column === null || times < NOISE ? [] : [{ column, times }];
    });
  }

  /** Takes in a column that saves sheets, by its prices more than it costs. */
  enter(column: Column): void {
    this.#pivot(column, (kind) => at(column.counts, kind), -1);
  }

  /** Where a box more would save sheets, more boxes than asked are let in. @returns whether there was such a kind */
  enterSurplus(): boolean {
    const prices = this.prices;
    const kind = prices.reduce((least, price, index) => (price < at(prices, least) ? index : least), 0);
    if (at(prices, kind) >= -NOISE) return false;
    return this.#pivot(null, (row) => (row === kind ? -1 : 0), kind);
  }

  #pivot(column: Column | null, entry: (kind: number) => number, surplusOf: number): boolean {
    const size = this.#size;
    const inverse = this.#inverse;
    const change = this.#times.map((_, row) => {
      let sum = 0;
      for (let kind = 0; kind < size; kind += 1) sum += at(inverse, row * size + kind) * entry(kind);
      return sum;
    });
    let leaving = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let row = 0; row < size; row += 1) {
      if (at(change, row) <= NOISE) continue;
      const ratio = Math.max(0, at(this.#times, row)) / at(change, row);
      const isTie = Math.abs(ratio - least) <= NOISE;
      if (isTie ? at(change, row) > at(change, leaving) : ratio < least) {
        least = Math.min(least, ratio);
        leaving = row;
      }
    }
    if (leaving < 0) return false;
    this.#basis[leaving] = column;
    this.#surplusOf[leaving] = surplusOf;
    this.#entered += 1;
    if (this.#entered % FRESH_AFTER === 0) this.#refresh();
    else this.#eliminate(leaving, change);
    return true;
  }

  #eliminate(leaving: number, change: Float64Array): void {
    const size = this.#size;
    const inverse = this.#inverse;
    const pivot = at(change, leaving);
    for (let kind = 0; kind < size; kind += 1) {
      inverse[leaving * size + kind] = at(inverse, leaving * size + kind) / pivot;
    }
    for (let row = 0; row < size; row += 1) {
      const factor = at(change, row);
      if (row === leaving || factor === 0) continue;
      for (let kind = 0; kind < size; kind += 1) {
        const key = row * size + kind;
        inverse[key] = at(inverse, key) - factor * at(inverse, leaving * size + kind);
      }
    }
    this.#count();
  }

  /** The inverse from the columns themselves. */
  #refresh(): void {
    const size = this.#size;
    const rows = Array.from({ length: size }, (_, kind) =>
      this.#basis.map((column, row) =>
        column === null ? (at(this.#surplusOf, row) === kind ? -1 : 0) : at(column.counts, kind),
      ),
    );
    this.#inverse = Float64Array.from(inverseOf(rows).flat());
    this.#count();
  }

  #count(): void {
    const size = this.#size;
    this.#times = Float64Array.from({ length: size }, (_, row) => {
      let sum = 0;
      for (let kind = 0; kind < size; kind += 1)
        sum += at(this.#inverse, row * size + kind) * at(this.asked, kind);
      return sum;
    });
  }
}
