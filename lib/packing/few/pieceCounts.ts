import { at } from '@/lib/packing/at';

/** How many boxes of each size a block holds: a row of small numbers side by side in a few words. */
export type Counts = readonly number[];

/** Bits of a word that are used: sums of two words must stay whole numbers of 31 bits. */
const WORD_BITS = 30;

interface Field {
  readonly word: number;
  readonly shift: number;
  readonly limit: number;
}

/**
 * Adds up counts of many sizes at once. Every size has a few bits of a word, and one more that a sum above what
 * there is sets: whether two blocks share a box is told by a look at a word or two.
 */
export class PieceCounts {
  readonly none: Counts;
  /** All boxes there are. */
  readonly all: Counts;
  readonly #fields: readonly Field[];
  /** Added to a sum, it carries into the spare bit as soon as there are more of a size than exist. */
  readonly #offsets: number[] = [];
  readonly #guards: number[] = [];

  /** @param limits boxes of each size, 1 or more, below 2^28 */
  constructor(limits: readonly number[]) {
    let word = 0;
    let shift = 0;
    const all: number[] = [];
    this.#fields = limits.map((limit) => {
      const bits = 32 - Math.clz32(limit);
      if (shift + bits + 1 > WORD_BITS) {
        word += 1;
        shift = 0;
      }
      const field = { word, shift, limit };
      this.#offsets[word] = (this.#offsets[word] ?? 0) + (2 ** bits - 1 - limit) * 2 ** shift;
      this.#guards[word] = (this.#guards[word] ?? 0) | (1 << (shift + bits));
      all[word] = (all[word] ?? 0) + limit * 2 ** shift;
      shift += bits + 1;
      return field;
    });
    this.all = all;
    this.none = all.map(() => 0);
  }

  /** @returns whether there are boxes enough for both */
  fit(one: Counts, other: Counts): boolean {
    for (let word = 0; word < this.#guards.length; word += 1) {
      const sum = (one[word] ?? 0) + (other[word] ?? 0) + (this.#offsets[word] ?? 0);
      if ((sum & (this.#guards[word] ?? 0)) !== 0) return false;
    }
    return true;
  }

  one(size: number): Counts {
    const { word, shift } = at(this.#fields, size);
    return this.none.map((zero, place) => (place === word ? 2 ** shift : zero));
  }

  of(counts: Counts, size: number): number {
    const { word, shift, limit } = at(this.#fields, size);
    return (at(counts, word) >> shift) & (2 ** (32 - Math.clz32(limit)) - 1);
  }
}

export const sumOf = (one: Counts, other: Counts): Counts =>
  one.map((word, place) => word + (other[place] ?? 0));

/** What is left of the first; the second is part of it. */
export const leftOf = (all: Counts, taken: Counts): Counts =>
  all.map((word, place) => word - (taken[place] ?? 0));

export const isSame = (one: Counts, other: Counts): boolean =>
  one.every((word, place) => word === other[place]);
