import { at } from '@/lib/packing/at';
import type { Box, LaidBox, Work } from '@/lib/packing/box';
import { boxSizes } from '@/lib/packing/boxSizes';
import type { Random } from '@/lib/packing/seededRandom';
import type { Bin } from '@/lib/packing/sheet/fillSheets';
import { placeRules } from '@/lib/packing/sheet/openSheet';
import type { SheetSearch } from '@/lib/packing/sheet/sheetSearch';
import { type FilledSheet, fillSome, type NumberedBox } from './fillSome';

/** Work after which the thread is handed back; some 5 ms. */
const SLICE_STEPS = 40_000;

/** How far apart in size two boxes may be and still change places in the order. */
const LARGEST_SHUFFLE = 0.6;

/** Tries for each sheet without gain after which what is left out weighs more, and by what share of its area. */
const PATIENCE = 20;
const MORE_WEIGHT = 0.3;

/** Below this, weights differ by rounding alone. */
const NOISE = 1e-12;

/**
 * Takes the emptiest sheet away and packs its boxes into the others: one or two sheets at a time are laid anew with
 * what is left out, and what then is left out is to weigh less. Boxes that are left out again and again weigh more
 * and more, so that others make room for them.
 *
 * One sheet taken apart among a few others: A. Lodi, S. Martello, D. Vigo, INFORMS Journal on Computing 11, 345-357,
 * 1999. Weights that grow: C. Voudouris, E. Tsang, European Journal of Operational Research 113, 469-499, 1999.
 */
export const oneSheetLess: SheetSearch = function* oneSheetLess({ bin, best, least }, work, random) {
  if (best.length < 2 || best.length <= least) return null;
  const search = new Search(bin, best, random);
  while (work.steps > 0) {
    const next = Math.max(0, work.steps - SLICE_STEPS);
    while (work.steps > next) {
      if (search.layAnew(work)) return search.layout;
    }
    yield;
  }
  return null;
};

class Search {
  #sheets: FilledSheet[];
  #left: readonly NumberedBox[];
  /** What it costs to leave each box out; its share of a sheet to begin with. */
  readonly #weights: number[] = [];
  #triesInVain = 0;

  constructor(
    private readonly bin: Bin,
    best: readonly (readonly LaidBox[])[],
    private readonly random: Random,
  ) {
    const fullestFirst = best
      .map((laid) => ({
        laid,
        boxes: laid.map(({ kind, width, height }) => ({
          kind,
          width,
          height,
          index: this.#weights.push(this.#shareOf({ width, height })) - 1,
        })),
        used: laid.reduce((sum, { width, height }) => sum + width * height, 0),
      }))
      .sort((a, b) => b.used - a.used);
    this.#left = at(fullestFirst, best.length - 1).boxes;
    this.#sheets = fullestFirst.slice(0, -1);
  }

  get layout(): readonly (readonly LaidBox[])[] {
    return this.#sheets.map(({ laid }) => laid);
  }

  /** @returns whether nothing is left out any more */
  layAnew(work: Work): boolean {
    const chosen = this.#choose();
    const before = chosen.map((place) => at(this.#sheets, place));
    const offered = this.#shuffled([...before.flatMap(({ boxes }) => boxes), ...this.#left]);
    work.steps -= offered.length;
    const rule = at(placeRules, Math.floor(this.random() * placeRules.length));
    const { sheets, left } = fillSome(offered, chosen.length, this.bin, rule, work);
    const gain = this.#weightOf(this.#left) - this.#weightOf(left);
    if (gain > NOISE || (gain >= -NOISE && fullness(sheets) >= fullness(before))) {
      this.#sheets = this.#sheets.map((sheet, place) => {
        const turn = chosen.indexOf(place);
        return turn < 0 ? sheet : at(sheets, turn);
      });
      this.#left = left;
    }
    this.#triesInVain = gain > NOISE ? 0 : this.#triesInVain + 1;
    if (this.#triesInVain > PATIENCE * this.#sheets.length) {
      this.#triesInVain = 0;
      for (const box of this.#left) {
        this.#weights[box.index] = at(this.#weights, box.index) + MORE_WEIGHT * this.#shareOf(box);
      }
    }
    return this.#left.length === 0;
  }

  #choose(): readonly number[] {
    const one = Math.floor(this.random() * this.#sheets.length);
    if (this.#sheets.length === 1 || this.random() < 0.5) return [one];
    const step = 1 + Math.floor(this.random() * (this.#sheets.length - 1));
    return [one, (one + step) % this.#sheets.length];
  }

  #shuffled(boxes: readonly NumberedBox[]): readonly NumberedBox[] {
    const size = at(boxSizes, Math.floor(this.random() * boxSizes.length));
    const spread = this.random() * LARGEST_SHUFFLE;
    return boxes
      .map((box) => ({ box, key: size(box) * (1 - spread * this.random()) }))
      .sort((a, b) => b.key - a.key)
      .map(({ box }) => box);
  }

  #weightOf(boxes: readonly NumberedBox[]): number {
    return boxes.reduce((sum, { index }) => sum + at(this.#weights, index), 0);
  }

  #shareOf({ width, height }: Pick<Box, 'width' | 'height'>): number {
    return (width * height) / (this.bin.width * this.bin.height);
  }
}

/** The sum of squares grows when a box goes from an emptier sheet to a fuller one. */
const fullness = (sheets: readonly FilledSheet[]): number =>
  sheets.reduce((sum, { used }) => sum + used * used, 0);
