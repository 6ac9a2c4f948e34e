import type { Box, LaidBox, Work } from '@/lib/packing/box';

/** What makes one free place better than another; lower is better, the second breaks ties. */
export type PlaceRule = 'shortSide' | 'area' | 'corner';

export const placeRules: readonly PlaceRule[] = ['shortSide', 'area', 'corner'];

/** A place for a box on a sheet. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly score: number;
  readonly tie: number;
}

/**
 * A sheet being filled. Its free room is kept as all largest free rectangles, overlapping ones among them.
 *
 * Maximal rectangles with best fit: J. Jylänki, "A thousand ways to pack the bin", 2010.
 */
export class OpenSheet {
  readonly laid: LaidBox[] = [];
  /** Area covered, square ticks. */
  used = 0;
  /** Free rectangles, four numbers each: left, top, right, bottom. */
  #free: number[];

  constructor(width: number, height: number) {
    this.#free = [0, 0, width, height];
  }

  /** @returns the best place by a rule, or null where the box does not fit. */
  find({ width, height }: Box, mayTurn: boolean, rule: PlaceRule, work: Work): Place | null {
    let best: Place | null = null;
    const free = this.#free;
    work.steps -= free.length / 4 + 1;
    const ways = mayTurn && width !== height ? 2 : 1;
    for (let at = 0; at < free.length; at += 4) {
      const x = free[at] ?? 0;
      const y = free[at + 1] ?? 0;
      const across = (free[at + 2] ?? 0) - x;
      const down = (free[at + 3] ?? 0) - y;
      for (let way = 0; way < ways; way += 1) {
        const wide = way === 0 ? width : height;
        const high = way === 0 ? height : width;
        if (wide > across || high > down) continue;
        const score = scoreOf(rule, x, y, across, down, wide, high);
        if (best !== null && score > best.score) continue;
        const tie =
          rule === 'shortSide' ? Math.max(across - wide, down - high) : Math.min(across - wide, down - high);
        if (best === null || score < best.score || tie < best.tie) {
          best = { x, y, width: wide, height: high, score, tie };
        }
      }
    }
    return best;
  }

  lay(kind: number, { x, y, width, height }: Place, work: Work): void {
    this.laid.push({ kind, x, y, width, height });
    this.used += width * height;
    const right = x + width;
    const bottom = y + height;
    const kept: number[] = [];
    const cut: number[] = [];
    const free = this.#free;
    work.steps -= free.length / 4;
    for (let at = 0; at < free.length; at += 4) {
      const x1 = free[at] ?? 0;
      const y1 = free[at + 1] ?? 0;
      const x2 = free[at + 2] ?? 0;
      const y2 = free[at + 3] ?? 0;
      if (x >= x2 || right <= x1 || y >= y2 || bottom <= y1) {
        kept.push(x1, y1, x2, y2);
        continue;
      }
      if (x > x1) cut.push(x1, y1, x, y2);
      if (right < x2) cut.push(right, y1, x2, y2);
      if (y > y1) cut.push(x1, y1, x2, y);
      if (bottom < y2) cut.push(x1, bottom, x2, y2);
    }
    work.steps -= (cut.length / 4) * (kept.length / 4 / 2);
    // Rectangles that were left whole lie in no other; only new ones may lie in one of them or in each other.
    for (let at = 0; at < cut.length; at += 4) {
      if (!isInside(cut, at, kept, -1) && !isInside(cut, at, cut, at)) {
        kept.push(cut[at] ?? 0, cut[at + 1] ?? 0, cut[at + 2] ?? 0, cut[at + 3] ?? 0);
      }
    }
    this.#free = kept;
  }
}

function scoreOf(
  rule: PlaceRule,
  x: number,
  y: number,
  across: number,
  down: number,
  wide: number,
  high: number,
): number {
  switch (rule) {
    case 'shortSide':
      return Math.min(across - wide, down - high);
    case 'area':
      return across * down - wide * high;
    case 'corner':
      return y + high + (x + wide) * 1e-9;
    default:
      return rule satisfies never;
  }
}

/** @returns whether the rectangle at `at` lies in one of `others`; of two equal ones the first stays. */
function isInside(some: readonly number[], at: number, others: readonly number[], self: number): boolean {
  const x1 = some[at] ?? 0;
  const y1 = some[at + 1] ?? 0;
  const x2 = some[at + 2] ?? 0;
  const y2 = some[at + 3] ?? 0;
  for (let other = 0; other < others.length; other += 4) {
    if (other === self) continue;
    const ox1 = others[other] ?? 0;
    const oy1 = others[other + 1] ?? 0;
    const ox2 = others[other + 2] ?? 0;
    const oy2 = others[other + 3] ?? 0;
    if (x1 < ox1 || y1 < oy1 || x2 > ox2 || y2 > oy2) continue;
    const same = x1 === ox1 && y1 === oy1 && x2 === ox2 && y2 === oy2;
    if (!same || self < 0 || other < self) return true;
  }
  return false;
}
