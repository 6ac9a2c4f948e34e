import type { BreakList, PriceBreak } from '@/lib/price/list/breakList';

/**
 * Keeps the prices and moves each break down to where its edge is clean: n ≤ p before ÷ (p before − p). Buyers reach
 * the lower prices sooner, which costs margin. A break that would fall on the one before takes its place.
 *
 * @returns a list in which no total falls
 */
export function shiftBreaks(list: BreakList): BreakList {
  const shifted: PriceBreak[] = [];
  for (const { from, each } of list.breaks) {
    let start = from;
    for (let before = shifted.at(-1); before !== undefined; before = shifted.at(-1)) {
      const clean = each < before.each ? Math.floor(before.each / (before.each - each)) : start;
      start = Math.min(start, clean);
      if (start > before.from) break;
      // Nothing is left of the break before: this one begins where it did, and is measured against the next.
      start = before.from;
      shifted.pop();
    }
    shifted.push({ from: start, each });
  }
  const [first = list.breaks[0], ...rest] = shifted;
  return { ...list, breaks: [first, ...rest] };
}
