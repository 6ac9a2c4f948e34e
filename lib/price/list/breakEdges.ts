/** What breaks are judged by. Money in whole minor units; needs unrounded. */
export interface BreakNeeds {
  /** Price a piece must bring in an order of n, by n; index 0 is not used, up to `judgedTo` at the least. */
  readonly each: readonly number[];
  /** The same for the dearest of all orders from n on. */
  readonly openEach: (n: number) => number;
  /** The least order. */
  readonly from: number;
  readonly judgedTo: number;
  /** Lifts a price to the maker's ending. */
  readonly lifted: (each: number) => number;
}

/** A break that begins somewhere at one of the prices it may have there: that of its dearest order. */
export interface BreakNode {
  readonly start: number;
  readonly price: number;
}

/**
 * Every break a list may have, in three rows of one length: the break, the one that follows (−1 after the open one),
 * and the most that an order inside pays over what it must bring, as a share of it.
 */
export interface BreakEdges {
  readonly nodes: readonly BreakNode[];
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly overcharge: Float64Array;
}

/**
 * What a break overcharges depends on itself and on the price of the next, because no order pays more than the first
 * of the next; that price depends on where the next one ends, and is one of a few.
 */
export function breakEdges({ each, openEach, from, judgedTo, lifted }: BreakNeeds): BreakEdges {
  const last = Math.max(from, judgedTo);
  const lift = memo(lifted);
  const nodes: BreakNode[] = [];
  /** By start: the break that ends before each later quantity, the open one last; and all of them once. */
  const endings: number[][] = [];
  const beginning: number[][] = [];
  for (let start = from; start <= last; start += 1) {
    const known = new Map<number, number>();
    const nodeAt = (price: number): number => {
      const found = known.get(price) ?? nodes.push({ start, price }) - 1;
      known.set(price, found);
      return found;
    };
    const row: number[] = [];
    let dearest = 0;
    for (let end = start + 1; end <= last; end += 1) {
      dearest = Math.max(dearest, each[end - 1] ?? 0);
      row.push(nodeAt(lift(dearest)));
    }
    row.push(nodeAt(lift(openEach(start))));
    endings[start] = row;
    beginning[start] = [...known.values()];
  }
  const judge = overcharges(each, last);
  const edges: { from: number[]; to: number[]; overcharge: number[] } = { from: [], to: [], overcharge: [] };
  const add = (own: number, next: number, overcharge: number) => {
    edges.from.push(own);
    edges.to.push(next);
    edges.overcharge.push(overcharge);
  };
  for (let start = from; start <= last; start += 1) {
    const row = endings[start] ?? [];
    const priceOf = (node: number) => nodes[node]?.price ?? 0;
    for (let next = start + 1; next <= last; next += 1) {
      const own = row[next - start - 1] ?? 0;
      const price = priceOf(own);
      for (const following of beginning[next] ?? []) {
        const nextPrice = priceOf(following);
        // More pieces never cost more each; and a break whose first order pays more than the next is one nobody pays.
        if (nextPrice >= price || next * nextPrice < start * price) continue;
        add(own, following, judge(start, next - 1, price, next * nextPrice));
      }
    }
    const open = row.at(-1) ?? 0;
    add(open, -1, judge(start, last, priceOf(open), Number.MAX_VALUE));
  }
  return {
    nodes,
    from: Int32Array.from(edges.from),
    to: Int32Array.from(edges.to),
    overcharge: Float64Array.from(edges.overcharge),
  };
}

// Helpers

/** An order pays its own price until that is more than the first order of the next break: two stretches, two maxima. */
function overcharges(each: readonly number[], last: number) {
  const shares = Float64Array.from({ length: last + 1 }, (_, n) => (n === 0 ? 0 : 1 / (each[n] ?? 0)));
  const ofPrice = rangeMaximum(shares);
  const ofTotal = rangeMaximum(shares.map((share, n) => (n === 0 ? 0 : share / n)));
  return (from: number, to: number, price: number, cap: number): number => {
    const held = Math.max(from, Math.floor(cap / price) + 1);
    const own = price * ofPrice(from, Math.min(to, held - 1));
    return (held > to ? own : Math.max(own, cap * ofTotal(held, to))) - 1;
  };
}

/** @returns the largest of the values from one place to another, both included; 0 where there are none. */
function rangeMaximum(values: Float64Array): (from: number, to: number) => number {
  const levels = [values];
  for (let width = 1; 2 * width <= values.length; width *= 2) {
    const before = levels.at(-1) ?? values;
    levels.push(before.map((value, at) => Math.max(value, before[at + width] ?? 0)));
  }
  return (from, to) => {
    if (to < from) return 0;
    const level = 31 - Math.clz32(to - from + 1);
    const row = levels[level] ?? values;
    return Math.max(row[from] ?? 0, row[to - (1 << level) + 1] ?? 0);
  };
}

function memo(of: (amount: number) => number): (amount: number) => number {
  const known = new Map<number, number>();
  return (amount) => {
    const found = known.get(amount) ?? of(amount);
    known.set(amount, found);
    return found;
  };
}
