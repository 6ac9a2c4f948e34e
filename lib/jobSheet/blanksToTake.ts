/** One size of a line: how many good pieces are needed, and how likely a blank becomes one. */
interface SizeNeeded {
  readonly needed: number;
  /** Share of blanks that end as good pieces, over 0 and at most 1. */
  readonly chance: number;
  /** What a blank costs; between two spares that help as much the cheaper is taken. */
  readonly price: number;
}

interface BlanksToTake {
  /** Blanks of each size, in the order of the sizes. */
  readonly take: readonly number[];
  /** How likely it is that every size is covered. */
  readonly covered: number;
}

/** Spares of one size beyond this are a slip of a figure, not a stack of blanks. */
const MOST_SPARES = 20_000;

/**
 * How many blanks of each size to lay out so that every size is covered with a wanted confidence: from the needed ones
 * on, one after the other, always of the size that gains the most. The chance that b blanks hold n good ones is the
 * binomial tail, counted by the trial on which the n-th good one comes.
 *
 * @param confidence over 0 and under 1
 */
export function blanksToTake(sizes: readonly SizeNeeded[], confidence: number): BlanksToTake {
  const stacks = sizes.map(stackOf);
  const covered = () => stacks.reduce((all, { reached }) => all * reached, 1);
  for (let spares = 0; spares < MOST_SPARES && covered() < confidence; spares += 1) {
    const [best] = stacks.toSorted((one, other) => other.gain() - one.gain() || one.price - other.price);
    if (best === undefined) break;
    best.add();
  }
  return { take: stacks.map(({ count }) => count), covered: covered() };
}

// Helpers

/** A stack of blanks of one size that grows by one. */
interface Stack {
  readonly price: number;
  count: number;
  /** Chance that it holds all good ones. */
  reached: number;
  /** What one more adds to the logarithm of that chance. */
  readonly gain: () => number;
  readonly add: () => void;
}

function stackOf({ needed, chance, price }: SizeNeeded): Stack {
  const good = Math.ceil(needed);
  // The logarithm of the chance that the last good one comes on the present trial: its power alone would vanish.
  let last = good * Math.log(chance);
  const next = (count: number) => last + Math.log(count / (count + 1 - good)) + Math.log1p(-chance);
  const stack: Stack = {
    price,
    count: good,
    reached: good === 0 || chance >= 1 ? 1 : Math.exp(last),
    gain: () => {
      if (stack.reached >= 1) return 0;
      // So far from enough that no chance can be told yet: this one comes first.
      if (stack.reached === 0) return Number.POSITIVE_INFINITY;
      return Math.log1p(Math.exp(next(stack.count)) / stack.reached);
    },
    add: () => {
      last = next(stack.count);
      stack.count += 1;
      stack.reached = Math.min(1, stack.reached + Math.exp(last));
    },
  };
  return stack;
}
