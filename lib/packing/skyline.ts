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
      if ((this.heights[place] ?? 0) < (this.heights[low] ?? 0)) low = place;
    }
    return low;
  }

  widthAt(place: number): number {
    return this.widths[place] ?? 0;
  }

  heightAt(place: number): number {
    return this.heights[place] ?? 0;
  }

  leftOf(place: number): number {
    let left = 0;
    for (let before = 0; before < place; before += 1) left += this.widths[before] ?? 0;
    return left;
  }

  /** @returns height of the lower step beside one; `top` where the room's wall is. */
  lowerNeighbour(place: number, top: number): number {
    return Math.min(this.heights[place - 1] ?? top, this.heights[place + 1] ?? top);
  }

  /** @returns the skyline with the left `width` of a step raised to a height. */
  raised(place: number, width: number, height: number): Skyline {
    const widths: number[] = [];
    const heights: number[] = [];
    for (let step = 0; step < this.widths.length; step += 1) {
      const wide = this.widths[step] ?? 0;
      const level = this.heights[step] ?? 0;
      if (step !== place) push(widths, heights, wide, level);
      else {
        push(widths, heights, width, height);
        if (wide > width) push(widths, heights, wide - width, level);
      }
    }
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

/** Adds a step; one as high as the last makes that one wider. */
function push(widths: number[], heights: number[], wide: number, high: number): void {
  const last = heights.length - 1;
  if (last >= 0 && heights[last] === high) widths[last] = (widths[last] ?? 0) + wide;
  else {
    widths.push(wide);
    heights.push(high);
  }
}
