import { at } from './at';
import type { Box, BoxKind, LaidBox } from './box';
import { reachable } from './reachable';
import { Skyline } from './skyline';

/**
 * Looks for a layout of all boxes in one room that leaves hardly a gap: always fills the lowest, leftmost place of
 * the skyline, and turns back as soon as more area is lost than can be spared.
 *
 * Skyline and lowest gap: E. Burke, G. Kendall, G. Whitwell, Operations Research 52, 655-671, 2004. The bound on
 * lost area reads every column and row of free room against the lengths that sides can add up to, as
 * F. Barnes, Discrete Mathematics 26, 93-100, 1979, does for the whole sheet.
 *
 * @param steps skylines looked at, at most
 * @param sizeOf what makes a box large: larger ones are tried first
 * @returns null where none is found; unless the steps ran out there hardly is one
 */
export function fillSearch(
  bin: { readonly width: number; readonly height: number },
  kinds: readonly BoxKind[],
  steps: number,
  sizeOf: (box: Box) => number = ({ width, height }) => width * height,
): readonly LaidBox[] | null {
  const scaled = reachable(bin, kinds);
  if (scaled === null) return null;
  const area = kinds.reduce((sum, { width, height, count }) => sum + width * height * count, 0);
  const { unit, width, height } = scaled;
  const spare = width * height - area / unit ** 2;
  if (spare < 0) return null;
  const groups = groupsOf(kinds);
  const ways = groups.flatMap(({ kind }, index) => waysOf(kind, index, unit));
  ways.sort((a, b) => sizeOf(b) - sizeOf(a) || b.width - a.width || a.kind - b.kind);
  const counts = groups.map(({ members }) => members.length);
  const search = new Search(width, height, ways, counts, scaled.longestWithin, steps);
  if (!search.fill(Skyline.flat(width), spare)) return null;
  return search.placed.map((box) => ({
    kind: at(groups, box.kind).members.pop() ?? 0,
    x: box.x * unit,
    y: box.y * unit,
    width: box.width * unit,
    height: box.height * unit,
  }));
}

class Search {
  readonly placed: LaidBox[] = [];
  readonly #left: number[];
  /** The least loss with which a skyline was left unfinished: coming back with no less leads nowhere. */
  readonly #seen = new Map<number | string, number>();
  #missing: number;

  constructor(
    private readonly width: number,
    private readonly height: number,
    private readonly ways: readonly Box[],
    counts: readonly number[],
    private readonly longestWithin: Int32Array,
    private steps: number,
  ) {
    this.#left = [...counts];
    this.#missing = counts.reduce((sum, count) => sum + count, 0);
  }

  fill(line: Skyline, spare: number): boolean {
    if (this.#missing === 0) return true;
    this.steps -= 1;
    if (this.steps < 0 || line.leastLoss(this.height, this.longestWithin) > spare) return false;
    const key = this.#left.length > 1 ? `${line.key}/${this.#left.join()}` : line.key;
    if ((this.#seen.get(key) ?? -1) >= spare) return false;
    this.#seen.set(key, spare);
    const low = line.lowest();
    for (const way of this.ways) {
      if (this.#left[way.kind] === 0) continue;
      if (way.width > line.widthAt(low) || line.heightAt(low) + way.height > this.height) continue;
      if (this.#lay(way, line, low, spare)) return true;
    }
    return this.#leave(line, low, spare);
  }

  #lay(way: Box, line: Skyline, low: number, spare: number): boolean {
    this.placed.push({ ...way, x: line.leftOf(low), y: line.heightAt(low) });
    this.#left[way.kind] = at(this.#left, way.kind) - 1;
    this.#missing -= 1;
    if (this.fill(line.raised(low, way.width, line.heightAt(low) + way.height), spare)) return true;
    this.placed.pop();
    this.#left[way.kind] = at(this.#left, way.kind) + 1;
    this.#missing += 1;
    return false;
  }

  /** Loses the whole lowest gap, or a strip at its left up to the left neighbour. */
  #leave(line: Skyline, low: number, spare: number): boolean {
    const level = line.heightAt(low);
    const gap = line.widthAt(low);
    const rise = line.lowerNeighbour(low, this.height) - level;
    if (gap < this.width && gap * rise <= spare) {
      if (this.fill(line.raised(low, gap, level + rise), spare - gap * rise)) return true;
    }
    if (low === 0) return false;
    const left = line.heightAt(low - 1);
    for (let strip = 1; strip < gap && strip * (left - level) <= spare; strip += 1) {
      // What is right of the strip is filled to the last: otherwise the boxes could move left over it.
      if (this.longestWithin[gap - strip] !== gap - strip) continue;
      if (this.fill(line.raised(low, strip, left), spare - strip * (left - level))) return true;
    }
    return false;
  }
}

/** Boxes of one size, whosever they are: which of them lies where makes no difference to the search. */
interface Group {
  readonly kind: BoxKind;
  /** The kind of each box, to be handed out again. */
  readonly members: number[];
}

function groupsOf(kinds: readonly BoxKind[]): readonly Group[] {
  const groups = new Map<string, Group>();
  for (const [index, kind] of kinds.entries()) {
    const key = `${kind.width} ${kind.height} ${kind.mayTurn}`;
    const group = groups.get(key) ?? { kind, members: [] };
    group.members.push(...Array.from({ length: kind.count }, () => index));
    groups.set(key, group);
  }
  return [...groups.values()];
}

function waysOf(kind: BoxKind, index: number, unit: number): readonly Box[] {
  const upright = { kind: index, width: kind.width / unit, height: kind.height / unit };
  const turns = kind.mayTurn && kind.width !== kind.height;
  return turns ? [upright, { kind: index, width: upright.height, height: upright.width }] : [upright];
}
