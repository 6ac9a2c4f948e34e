import { at } from './at';

/** The upper edge of what is laid so far: steps from left to right, each with its width and height. */
export class Skyline {
  private constructor(
    private readonly widths: readonly number[],
    private readonly heights: readonly number[],
  ) {}

  static flat(width: number): Skyline {
    return new Skyline([width], [0]);
  }

  /** @returns a number that two different skylines hardly ever share: 52 bits, mixed twice. */
  get key(): number {
    let high = 1;
    let low = 1;
    for (let step = 0; step < this.widths.length; step += 1) {
      const wide = this.widths[step] ?? 0;
      const tall = this.heights[step] ?? 0;
      high = Math.imul(high ^ wide, 0x9e3779b1) ^ Math.imul(tall + 1, 0x85ebca6b);
      low = Math.imul(low ^ tall, 0xc2b2ae35) ^ Math.imul(wide + 1, 0x27d4eb2f);
      high ^= high >>> 15;
      low ^= low >>> 13;
    }
    return (high >>> 6) * 2 ** 26 + (low >>> 6);
  }

  /** @returns the place of the lowest step, the left one of equals. */
  lowest(): number {
    let low = 0;
    for (let place = 1; place < this.heights.length; place += 1) {
      if (at(this.heights, place) < at(this.heights, low)) low = place;
    }
    return low;
  }

  widthAt(place: number): number {
    return at(this.widths, place);
  }

  heightAt(place: number): number {
    return at(this.heights, place);
  }

  leftOf(place: number): number {
    let left = 0;
    for (let before = 0; before < place; before += 1) left += at(this.widths, before);
    return left;
  }

  /** @returns height of the lower step beside one; `top` where the room's wall is. */
  lowerNeighbour(place: number, top: number): number {
    return Math.min(this.heights[place - 1] ?? top, this.heights[place + 1] ?? top);
  }

  /** @returns the skyline with the left `width` of a step raised to a height. */
  raised(place: number, width: number, height: number): Skyline {
    const widths = this.widths.slice();
    const heights = this.heights.slice();
    const rest = at(widths, place) - width;
    const level = at(heights, place);
    widths[place] = width;
    heights[place] = height;
    if (rest > 0) {
      widths.splice(place + 1, 0, rest);
      heights.splice(place + 1, 0, level);
    } else if (heights[place + 1] === height) join(widths, heights, place);
    if (place > 0 && heights[place - 1] === height) join(widths, heights, place - 1);
    return new Skyline(widths, heights);
  }

  /**
   * The least area that must stay free below `top`: a free column or row holds no more than the longest length
   * that sides add up to.
   */
  leastLoss(top: number, longestWithin: Int32Array): number {
    let columns = 0;
    for (let step = 0; step < this.heights.length; step += 1) {
      const free = top - (this.heights[step] ?? 0);
      columns += (this.widths[step] ?? 0) * (free - (longestWithin[free] ?? 0));
    }
    return Math.max(columns, this.#rowLoss(top, longestWithin));
  }

  #rowLoss(top: number, longestWithin: Int32Array): number {
    let loss = 0;
    let level = this.heightAt(this.lowest());
    while (level < top) {
      let next = top;
      let free = 0;
      let lost = 0;
      for (let step = 0; step < this.heights.length; step += 1) {
        const height = this.heights[step] ?? 0;
        if (height <= level) free += this.widths[step] ?? 0;
        else {
          lost += free - (longestWithin[free] ?? 0);
          free = 0;
          if (height < next) next = height;
        }
      }
      lost += free - (longestWithin[free] ?? 0);
      loss += lost * (next - level);
      level = next;
    }
    return loss;
  }
}

/** Makes one step of two neighbours of one height. */
function join(widths: number[], heights: number[], place: number): void {
  widths[place] = at(widths, place) + at(widths, place + 1);
  widths.splice(place + 1, 1);
  heights.splice(place + 1, 1);
}
