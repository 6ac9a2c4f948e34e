import { at } from '@/lib/packing/at';

/** The lowest gap between what is laid. */
export interface Gap {
  readonly left: number;
  readonly width: number;
  readonly base: number;
  /** How far the walls rise above the gap; Infinity at the edges of the roll. */
  readonly wallLeft: number;
  readonly wallRight: number;
}

/** The edge of what is laid, as steps from left to right. */
export class RollEdge {
  readonly #widths: number[];
  readonly #heights: number[];
  #low = 0;

  constructor(width: number) {
    this.#widths = [width];
    this.#heights = [0];
  }

  lowest(): Gap {
    let low = 0;
    let left = 0;
    let passed = 0;
    for (let place = 0; place < this.#heights.length; place += 1) {
      if ((this.#heights[place] ?? 0) < (this.#heights[low] ?? 0)) {
        low = place;
        left = passed;
      }
      passed += this.#widths[place] ?? 0;
    }
    this.#low = low;
    const base = at(this.#heights, low);
    return {
      left,
      width: at(this.#widths, low),
      base,
      wallLeft: (this.#heights[low - 1] ?? Number.POSITIVE_INFINITY) - base,
      wallRight: (this.#heights[low + 1] ?? Number.POSITIVE_INFINITY) - base,
    };
  }

  /** Gives the lowest gap up: it becomes part of its lower neighbour. */
  level(): void {
    const left = this.#heights[this.#low - 1] ?? Number.POSITIVE_INFINITY;
    const right = this.#heights[this.#low + 1] ?? Number.POSITIVE_INFINITY;
    this.#heights[this.#low] = Math.min(left, right);
    this.#join(this.#low);
  }

  raise(width: number, height: number, atRight: boolean): void {
    const low = this.#low;
    const rest = at(this.#widths, low) - width;
    const base = at(this.#heights, low);
    const place = atRight && rest > 0 ? low + 1 : low;
    if (rest > 0) {
      this.#widths.splice(low, 1, atRight ? rest : width, atRight ? width : rest);
      this.#heights.splice(low, 1, base, base);
    }
    this.#heights[place] = base + height;
    this.#join(place);
  }

  #join(place: number): void {
    for (const first of [place, place - 1]) {
      if (first < 0 || this.#heights[first] !== this.#heights[first + 1]) continue;
      this.#widths[first] = at(this.#widths, first) + at(this.#widths, first + 1);
      this.#widths.splice(first + 1, 1);
      this.#heights.splice(first + 1, 1);
    }
  }
}
