import { at } from '@/lib/packing/at';
import type { Box, BoxKind, LaidBox } from '@/lib/packing/box';
import { type Counts, PieceCounts } from './pieceCounts';

/** Boxes by size, whosever they are: which of equal ones lies where makes no difference to a search. */
export class SizedBoxes {
  /** One box of each size; its kind is its place in this list. */
  readonly sizes: readonly Box[];
  readonly counts: PieceCounts;
  /** The kinds of the boxes of each size. */
  readonly #members: readonly (readonly number[])[];

  constructor(kinds: readonly BoxKind[]) {
    const members = new Map<string, number[]>();
    const sizes: Box[] = [];
    for (const [kind, { width, height, count }] of kinds.entries()) {
      const key = `${width} ${height}`;
      const known = members.get(key);
      if (known === undefined) sizes.push({ kind: sizes.length, width, height });
      const all = known ?? [];
      all.push(...Array.from({ length: count }, () => kind));
      members.set(key, all);
    }
    this.sizes = sizes;
    this.#members = [...members.values()];
    this.counts = new PieceCounts(this.#members.map(({ length }) => length));
  }

  /** @returns so many boxes of each size */
  boxesOf(counts: Counts): readonly Box[] {
    return this.sizes.flatMap((box, size) => Array.from({ length: this.counts.of(counts, size) }, () => box));
  }

  areaOf(counts: Counts): number {
    return this.boxesOf(counts).reduce((sum, { width, height }) => sum + width * height, 0);
  }

  /** @returns the sizes that occur, and how often */
  partOf(counts: Counts): { readonly sizes: readonly Box[]; readonly counts: PieceCounts } {
    const sizes = this.sizes.filter((_, size) => this.counts.of(counts, size) > 0);
    return { sizes, counts: new PieceCounts(sizes.map(({ kind }) => this.counts.of(counts, kind))) };
  }

  /** @returns a layout with the kinds handed out again */
  named(layout: readonly (readonly LaidBox[])[]): readonly (readonly LaidBox[])[] {
    const members = this.#members.map((all) => [...all]);
    return layout.map((boxes) =>
      boxes.map((box) => ({ ...box, kind: at(members, box.kind).pop() ?? box.kind })),
    );
  }
}
