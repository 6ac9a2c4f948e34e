/** Good pieces wanted of a size, and the chance that a blank of it ends good. */
interface Wanted {
  /** Whole, 0 or more. */
  readonly pieces: number;
  /** Above 0, up to 1. */
  readonly chance: number;
  /** What a blank costs; between two spares that help as much the cheaper is taken. */
  readonly price: number;
}

interface Blanks {
  /** By size, in the order given. */
  readonly blanks: readonly number[];
  /** How likely it is that every size comes out whole; 0 where a blank hardly ever ends good. */
  readonly covered: number;
}

/** Below this chance nobody asks for spares: the job itself is the trouble. */
const LEAST_CHANCE = 0.05;
/** Two gains that differ by less are one and the same. */
const SAME_GAIN = 1e-12;

/**
 * How many blanks of each size make every size whole with a wanted confidence: sizes do not pool. One blank at a time
 * goes to the size whose chance it raises most. The one way to it, whatever the confidence.
 *
 * @param confidence above 0, below 1
 * @returns what is expected to be used where a size hardly ever ends good
 */
export function blanksForConfidence(wanted: readonly Wanted[], confidence: number): Blanks {
  if (wanted.some(({ chance }) => chance < LEAST_CHANCE)) {
    return { blanks: wanted.map(({ pieces, chance }) => Math.ceil(pieces / chance - 1e-9)), covered: 0 };
  }
  const sizes = wanted.map(tailOf);
  const wantedLog = Math.log(confidence);
  let reached = sizes.reduce((sum, { log }) => sum + log, 0);
  while (reached < wantedLog - 1e-12) {
    const best = sizes.reduce((most, next) => (isBetter(next, most) ? next : most));
    reached += gain(best);
    add(best);
  }
  return { blanks: sizes.map(({ blanks }) => blanks), covered: Math.exp(reached) };
}

const isBetter = (next: Tail, most: Tail): boolean => {
  const more = gain(next) - gain(most);
  return Math.abs(more) <= SAME_GAIN ? next.price < most.price : more > 0;
};

// Helpers

/** The chance that `blanks` hold enough good ones: that the last good one wanted comes at `blanks` or before. */
interface Tail extends Wanted {
  blanks: number;
  /** Logarithm of that chance, and of the chance that it comes at exactly the next blank. */
  log: number;
  nextLog: number;
}

function tailOf({ pieces, chance, price }: Wanted): Tail {
  if (pieces === 0) return { pieces, chance, price, blanks: 0, log: 0, nextLog: Number.NEGATIVE_INFINITY };
  const first = pieces * Math.log(chance);
  const tail: Tail = {
    pieces,
    chance,
    price,
    blanks: pieces,
    log: first,
    nextLog: nextTerm(first, pieces, pieces, chance),
  };
  // Up to the mean every size needs them, so the search begins there.
  for (const mean = Math.floor(pieces / chance); tail.blanks < mean; ) add(tail);
  return tail;
}

function add(tail: Tail): void {
  tail.log = together(tail.log, tail.nextLog);
  tail.blanks += 1;
  tail.nextLog = nextTerm(tail.nextLog, tail.blanks, tail.pieces, tail.chance);
}

const gain = ({ log, nextLog }: Tail): number => together(log, nextLog) - log;

/** From the chance at `blanks` to that at one more: C(b, n − 1) over C(b − 1, n − 1) is b ÷ (b − n + 1). */
const nextTerm = (log: number, blanks: number, pieces: number, chance: number): number =>
  log + Math.log(blanks / (blanks - pieces + 1)) + Math.log1p(-chance);

/** ln(e^a + e^b), where b may be nothing. */
const together = (a: number, b: number): number =>
  b === Number.NEGATIVE_INFINITY ? a : Math.max(a, b) + Math.log1p(Math.exp(-Math.abs(a - b)));
