/*
 * What an order comes to, by the rules of the trade alone and in whole numbers of any length: a discount before tax is
 * spread by largest remainder, tax is rounded half up once or on each line, the deposit is its share of the rounded
 * total rounded half up, the balance is the rest.
 */

/** Shares are whole ten-thousandths: 700 is 7 %. */
export interface OracleOrder {
  /** Whole minor units, below 0 for a credit. */
  readonly amounts: readonly bigint[];
  readonly discount: { readonly share: bigint } | { readonly amount: bigint } | null;
  readonly tax: {
    readonly mode: 'added' | 'inside' | 'none';
    readonly share: bigint;
    readonly by: 'line' | 'document';
  };
  readonly depositShare: bigint;
}

export interface OracleSums {
  readonly before: bigint;
  readonly discount: bigint;
  readonly subtotal: bigint;
  readonly tax: bigint;
  readonly total: bigint;
  readonly deposit: bigint;
  readonly balance: bigint;
}

const WHOLE = 10_000n;

export function oracleSums({ amounts, discount, tax, depositShare }: OracleOrder): OracleSums {
  const before = sumOf(amounts);
  const off =
    discount === null ? 0n : 'share' in discount ? half(before * discount.share, WHOLE) : discount.amount;
  const taken =
    off === 0n
      ? amounts.map(() => 0n)
      : spread(
          off,
          amounts.map((one) => (one > 0n ? one : 0n)),
        );
  const left = amounts.map((one, index) => one - (taken[index] ?? 0n));
  const subtotal = sumOf(left);
  const taxed = tax.by === 'line' ? left : [subtotal];
  const below = tax.mode === 'inside' ? WHOLE + tax.share : WHOLE;
  const ofTax = tax.mode === 'none' ? 0n : sumOf(taxed.map((one) => half(one * tax.share, below)));
  const total = tax.mode === 'added' ? subtotal + ofTax : subtotal;
  const deposit = half(total * depositShare, WHOLE);
  return { before, discount: off, subtotal, tax: ofTax, total, deposit, balance: total - deposit };
}

/** Splits a whole over shares: each its floor, and one more to those with the largest remainders, the first first. */
export function spread(whole: bigint, shares: readonly bigint[]): readonly bigint[] {
  const sum = sumOf(shares);
  if (sum === 0n) return shares.map(() => 0n);
  const floors = shares.map((share) => (whole * share) / sum);
  const left = Number(whole - sumOf(floors));
  const order = shares
    .map((share, index) => ({ index, rest: (whole * share) % sum }))
    .sort((one, other) =>
      one.rest === other.rest ? one.index - other.index : one.rest < other.rest ? 1 : -1,
    )
    .slice(0, left)
    .map(({ index }) => index);
  return floors.map((floor, index) => (order.includes(index) ? floor + 1n : floor));
}

// Helpers

const sumOf = (all: readonly bigint[]): bigint => all.reduce((sum, one) => sum + one, 0n);

/** Half goes away from nothing. */
function half(above: bigint, below: bigint): bigint {
  const size = above < 0n ? -above : above;
  const whole = (2n * size + below) / (2n * below);
  return above < 0n ? -whole : whole;
}
