import { Decimal } from 'decimal.js';

/*
 * A capped list made anew from what orders must bring: every list of so many breaks is tried. Written from the rule in
 * words, with nothing of the product's own sums.
 */

interface Question {
  /** What a piece must bring in an order of n, currency units as written; from 1 on. */
  readonly each: (n: number) => Decimal;
  readonly from: number;
  readonly judgedTo: number;
  /** The dearest order of the open break is looked for up to so many times its first. */
  readonly openTimes: number;
  readonly step: Decimal.Value;
}

/** @returns the price of each break: what its dearest order needs, lifted to the ending. */
export function pricesOf(starts: readonly number[], question: Question): readonly Decimal[] {
  return starts.map((from, index) => {
    const to = (starts[index + 1] ?? from * question.openTimes + 1) - 1;
    let dearest = new Decimal(0);
    for (let n = from; n <= to; n += 1) dearest = Decimal.max(dearest, question.each(n));
    return liftedTo(dearest, question.step);
  });
}

/** Up to the next whole step; a billionth of a step above one is noise. */
export const liftedTo = (amount: Decimal, step: Decimal.Value): Decimal =>
  amount.div(step).minus('1e-9').ceil().times(step);

/** @returns what an order of n pays: its own break, or less where a larger order costs less. */
export function paidFor(n: number, starts: readonly number[], prices: readonly Decimal[]): Decimal {
  const own = starts.findLastIndex((from) => from <= n);
  return starts.reduce((least, from, index) => {
    if (index < own) return least;
    return Decimal.min(least, (prices[index] ?? new Decimal(0)).times(index === own ? n : from));
  }, new Decimal(Number.POSITIVE_INFINITY));
}

/** @returns the most that an order pays over what it must bring, as a share of it. */
export function largestOvercharge(starts: readonly number[], question: Question): Decimal {
  const prices = pricesOf(starts, question);
  let most = new Decimal(Number.NEGATIVE_INFINITY);
  for (let n = question.from; n <= question.judgedTo; n += 1)
    most = Decimal.max(most, paidFor(n, starts, prices).div(question.each(n).times(n)).minus(1));
  return most;
}

/**
 * A larger break costs less a piece, and its first order no less than that of the one before: else nobody would pay the
 * price that stands there.
 *
 * @returns the least largest overcharge of all such lists of so many breaks or fewer
 */
export function bestByTrying(count: number, question: Question): Decimal {
  let best = new Decimal(Number.POSITIVE_INFINITY);
  const tryFrom = (starts: readonly number[]): void => {
    const prices = pricesOf(starts, question);
    const falls = prices.every((price, at) => at === 0 || price.lt(prices[at - 1] ?? 0));
    const totals = prices.map((price, at) => price.times(starts[at] ?? 0));
    const isPaid = totals.every((total, at) => at === 0 || total.gte(totals[at - 1] ?? 0));
    if (falls && isPaid) best = Decimal.min(best, largestOvercharge(starts, question));
    if (starts.length === count) return;
    for (let next = (starts.at(-1) ?? 0) + 1; next <= question.judgedTo; next += 1)
      tryFrom([...starts, next]);
  };
  tryFrom([question.from]);
  return best;
}
