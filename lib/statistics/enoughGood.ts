/** Good ones that are wanted, and the chance of each one that is tried to be good. */
export interface GoodOnes {
  /** Whole, 0 or more. */
  readonly pieces: number;
  /** Above 0, up to 1. */
  readonly chance: number;
}

/** Chances below this are lost beside what stands before them. */
const NOTHING = Number.NEGATIVE_INFINITY;

/**
 * How likely some tries hold enough good ones. With one chance for all it is the tail of a binomial distribution, the
 * same as that the last good one wanted comes at that try or before (negative binomial distribution). Where some are
 * wanted at another chance they are tried one after the other from one stack, in whatever order: tries add up.
 *
 * @returns of a number of tries, whole and 0 or more, the natural logarithm of the chance; −∞ where it is none. What was
 *   worked out once is remembered.
 */
export function enoughGood(wanted: readonly GoodOnes[]): (tries: number) => number {
  const kinds = byChance(wanted);
  const least = kinds.reduce((sum, { pieces }) => sum + pieces, 0);
  const [only, ...others] = kinds;
  if (only === undefined) return () => 0;
  const lastAt = others.length === 0 ? triesOfOne(only) : triesOfAll(kinds);
  const within: number[] = [];
  return (tries) => {
    for (let spare = within.length; spare <= tries - least; spare += 1) {
      within.push(Math.min(0, together(within.at(-1) ?? NOTHING, lastAt(spare))));
    }
    return tries < least ? NOTHING : (within[tries - least] ?? 0);
  };
}

/**
 * The tail of the binomial distribution.
 *
 * @param tries whole, 0 or more
 * @param good whole; of 0 and less there are always enough
 * @param chance of one try to be good, 0 to 1
 * @returns how likely at least `good` of the tries are good, 0 to 1
 * @example atLeast(8, 7, 0.95) // => 0.9428 to four digits
 */
export const atLeast = (tries: number, good: number, chance: number): number =>
  Math.exp(enoughGood([{ pieces: good, chance }])(tries));

// Helpers

/** Log chance that the last good one wanted comes after so many spoiled ones. */
type LastAt = (spoiled: number) => number;

/** Those of one chance are one kind; those that are none are left out. */
function byChance(wanted: readonly GoodOnes[]): readonly GoodOnes[] {
  const pieces = new Map<number, number>();
  for (const one of wanted) {
    if (one.pieces > 0) pieces.set(one.chance, (pieces.get(one.chance) ?? 0) + one.pieces);
  }
  return [...pieces].map(([chance, count]) => ({ chance, pieces: count }));
}

/** Each from the one before: C(b, n − 1) over C(b − 1, n − 1) is b ÷ (b − n + 1). */
function triesOfOne({ pieces, chance }: GoodOnes): LastAt {
  const logs = [pieces * Math.log(chance)];
  const spoils = Math.log1p(-chance);
  return (spoiled) => {
    for (let next = logs.length; next <= spoiled; next += 1) {
      logs.push((logs[next - 1] ?? NOTHING) + Math.log((pieces + next - 1) / next) + spoils);
    }
    return logs[spoiled] ?? NOTHING;
  };
}

/** All kinds after one another: for each way to share the spoiled ones out. */
function triesOfAll(kinds: readonly GoodOnes[]): LastAt {
  return kinds.map(triesOfOne).reduce((before, next) => {
    const logs: number[] = [];
    return (spoiled) => {
      for (let all = logs.length; all <= spoiled; all += 1) logs.push(shared(before, next, all));
      return logs[spoiled] ?? NOTHING;
    };
  });
}

function shared(one: LastAt, other: LastAt, spoiled: number): number {
  let most = NOTHING;
  for (let of = 0; of <= spoiled; of += 1) most = Math.max(most, one(of) + other(spoiled - of));
  if (most === NOTHING) return NOTHING;
  let sum = 0;
  for (let of = 0; of <= spoiled; of += 1) sum += Math.exp(one(of) + other(spoiled - of) - most);
  return most + Math.log(sum);
}

/** ln(e^a + e^b), where either may be nothing. */
function together(a: number, b: number): number {
  if (a === NOTHING || b === NOTHING) return Math.max(a, b);
  return Math.max(a, b) + Math.log1p(Math.exp(-Math.abs(a - b)));
}
