interface LabelToPlace {
  /** Where its tick stands, 0 to 1. */
  readonly ratio: number;
  /** Room it needs with the gap to its neighbour, in px. */
  readonly widthPx: number;
}

/**
 * Lays labels in one row as near to their ticks as they go without touching; null if the row is too short.
 *
 * The row is what isotonic regression gives: neighbours that would overlap become a block, and the block
 * takes the place that moves its labels least in all.
 *
 * @param labels - in the order of their ticks
 * @param rowPx - width of the row
 * @returns the middle of each label, in px from the left
 */
export function placeLabels(labels: readonly LabelToPlace[], rowPx: number): readonly number[] | null {
  let end = 0;
  const packed = labels.map(({ widthPx }) => {
    end += widthPx;
    return end - widthPx / 2;
  });
  if (end > rowPx) return null;
  const slack = rowPx - end;
  const blocks: { sum: number; count: number }[] = [];
  labels.forEach(({ ratio }, at) => {
    blocks.push({ sum: ratio * rowPx - (packed[at] ?? 0), count: 1 });
    for (let last = blocks.at(-1), before = blocks.at(-2); last && before && mean(before) > mean(last); ) {
      blocks.splice(-2, 2, { sum: before.sum + last.sum, count: before.count + last.count });
      last = blocks.at(-1);
      before = blocks.at(-2);
    }
  });
  const starts = blocks.flatMap((block) => Array.from({ length: block.count }, () => mean(block)));
  return packed.map((middle, at) => middle + Math.min(slack, Math.max(0, starts[at] ?? 0)));
}

// Helpers

const mean = (block: Readonly<{ sum: number; count: number }>) => block.sum / block.count;
