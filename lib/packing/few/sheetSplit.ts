import { at } from '@/lib/packing/at';
import type { BoxKind, LaidBox, Work } from '@/lib/packing/box';
import { boxSizes } from '@/lib/packing/boxSizes';
import type { Random } from '@/lib/packing/seededRandom';
import { type Bin, fillSheets } from '@/lib/packing/sheet/fillSheets';
import { placeRules } from '@/lib/packing/sheet/openSheet';
import { type Block, BlockPool, layBlock, type Tolerance } from './blocks';
import { type Counts, isSame, leftOf } from './pieceCounts';
import { SizedBoxes } from './sizedBoxes';

type Layout = readonly (readonly LaidBox[])[];

/** Work after which the thread is handed back; some 5 ms at most. */
const SLICE_STEPS = 25_000;

/** Sheets are chosen anew when so many times as many full ones are known. */
const MORE_FULL = 1.3;

/** The last sheet holds what the others leave: few boxes, so that wider strips between them can be tried. */
const LAST_SHEET: Tolerance = { mismatch: 0.04, loss: 0.06, blocks: 1_500 };
const LAST_ORDERS = 6;
const LAST_SHUFFLE = 0.5;

/** Splits boxes among a few sheets that are all but full. */
export class SheetSplit {
  /** Area that may stay free on all sheets together, square ticks; below 0 there are too few sheets. */
  readonly spare: number;
  readonly #boxes: SizedBoxes;
  readonly #sheetArea: number;
  /** Last sheets looked at in vain. */
  readonly #tried = new Set<string>();

  constructor(
    private readonly bin: Bin,
    kinds: readonly BoxKind[],
    private readonly sheets: number,
    private readonly random: Random,
  ) {
    this.#boxes = new SizedBoxes(kinds);
    this.#sheetArea = bin.width * bin.height;
    this.spare = sheets * this.#sheetArea - this.#boxes.areaOf(this.#boxes.counts.all);
  }

  *search(tolerance: Tolerance, work: Work): Generator<void, Layout | null> {
    const { sizes, counts } = this.#boxes;
    const pool = new BlockPool(sizes, this.bin, this.spare, counts, tolerance);
    let known = 0;
    let more = true;
    while (more && work.steps > 0) {
      more = yield* growSlice(pool, work);
      if (pool.full.length <= (more ? MORE_FULL * known : known)) continue;
      known = pool.full.length;
      const fullest = pool.full.toSorted((a, b) => b.area - a.area);
      const found = yield* this.#choose(fullest, counts.all, this.sheets, this.spare, work);
      if (found !== null) return this.#boxes.named(found);
    }
    return null;
  }

  /** Chooses full sheets without a box in common, in the order given; the last sheet takes what is left. */
  *#choose(
    full: readonly Block[],
    left: Counts,
    sheets: number,
    spare: number,
    work: Work,
  ): Generator<void, Layout | null> {
    if (sheets === 1) return yield* this.#lastSheet(full, left, work);
    const { counts } = this.#boxes;
    const others = leftOf(counts.all, left);
    let next = work.steps - SLICE_STEPS;
    for (const [index, block] of full.entries()) {
      if (work.steps <= 0) return null;
      if (work.steps < next) {
        yield;
        next = work.steps - SLICE_STEPS;
      }
      work.steps -= 1;
      const loss = this.#sheetArea - block.area;
      if (loss > spare || !counts.fit(block.counts, others)) continue;
      work.steps -= full.length / 4;
      const found = yield* this.#choose(
        full.slice(index + 1),
        leftOf(left, block.counts),
        sheets - 1,
        spare - loss,
        work,
      );
      if (found !== null) return [layBlock(block, this.bin), ...found];
    }
    return null;
  }

  *#lastSheet(full: readonly Block[], left: Counts, work: Work): Generator<void, Layout | null> {
    const known = full.find(({ counts }) => isSame(counts, left));
    if (known !== undefined) return [layBlock(known, this.bin)];
    const key = left.join();
    if (this.#tried.has(key)) return null;
    this.#tried.add(key);
    const laid = this.#layInOrder(left, work);
    if (laid !== null) return [laid];
    const { sizes, counts } = this.#boxes.partOf(left);
    const spare = this.#sheetArea - this.#boxes.areaOf(left);
    const pool = new BlockPool(sizes, this.bin, spare, counts, LAST_SHEET);
    let more = true;
    while (more && work.steps > 0) {
      more = yield* growSlice(pool, work);
      const whole = pool.full.find((block) => isSame(block.counts, counts.all));
      if (whole !== undefined) return [layBlock(whole, this.bin)];
    }
    return null;
  }

  /** Larger boxes first, in a few orders that differ by chance. */
  #layInOrder(left: Counts, work: Work): readonly LaidBox[] | null {
    const boxes = this.#boxes.boxesOf(left);
    for (let attempt = 0; attempt < LAST_ORDERS; attempt += 1) {
      const size = at(boxSizes, Math.floor(this.random() * boxSizes.length));
      const rule = at(placeRules, Math.floor(this.random() * placeRules.length));
      const spread = attempt === 0 ? 0 : LAST_SHUFFLE * this.random();
      const order = boxes
        .map((box) => ({ box, key: size(box) * (1 - spread * this.random()) }))
        .sort((a, b) => b.key - a.key)
        .map(({ box }) => box);
      const sheets = fillSheets(order, this.bin, { rule, choice: 'first', mostSheets: 1 }, work);
      if (sheets !== null) return at(sheets, 0).laid;
    }
    return null;
  }
}

/** @returns false where every block has been joined with every other */
function* growSlice(pool: BlockPool, work: Work): Generator<void, boolean> {
  const next = Math.max(0, work.steps - SLICE_STEPS);
  while (work.steps > next) {
    if (!pool.joinNext(work)) return false;
  }
  yield;
  return true;
}
