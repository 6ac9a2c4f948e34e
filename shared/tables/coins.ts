/** Notes and coins of a currency, in currency units, the largest first. */
export interface Cash {
  readonly notes: readonly number[];
  readonly coins: readonly number[];
  /** The largest note that customers commonly pay with at a stall. */
  readonly commonNote: number;
  /** What prices of a stall are whole multiples of; five times that keeps the tin smaller. */
  readonly priceStep: number;
}

/*
 * In everyday use [common practice, from memory]: notes and coins that are legal but hardly met at a stall are left out
 * (2 dollars, half a dollar, 500 euros). Which note is the largest commonly paid with is a judgement:
 * what machines give out, and one above where it is often met.
 */
const byCode: Readonly<Record<string, Cash>> = {
  USD: { notes: [100, 50, 20, 10, 5, 1], coins: [0.25, 0.1, 0.05, 0.01], commonNote: 50, priceStep: 1 },
  EUR: {
    notes: [200, 100, 50, 20, 10, 5],
    coins: [2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01],
    commonNote: 50,
    priceStep: 1,
  },
  GBP: {
    notes: [50, 20, 10, 5],
    coins: [2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01],
    commonNote: 20,
    priceStep: 1,
  },
  CAD: { notes: [100, 50, 20, 10, 5], coins: [2, 1, 0.25, 0.1, 0.05], commonNote: 50, priceStep: 1 },
  AUD: { notes: [100, 50, 20, 10, 5], coins: [2, 1, 0.5, 0.2, 0.1, 0.05], commonNote: 50, priceStep: 1 },
  NZD: { notes: [100, 50, 20, 10, 5], coins: [2, 1, 0.5, 0.2, 0.1], commonNote: 50, priceStep: 1 },
  CHF: {
    notes: [200, 100, 50, 20, 10],
    coins: [5, 2, 1, 0.5, 0.2, 0.1, 0.05],
    commonNote: 100,
    priceStep: 1,
  },
  SEK: { notes: [1000, 500, 200, 100, 50, 20], coins: [10, 5, 2, 1], commonNote: 500, priceStep: 10 },
  NOK: { notes: [1000, 500, 200, 100, 50], coins: [20, 10, 5, 1], commonNote: 500, priceStep: 10 },
  DKK: { notes: [500, 200, 100, 50], coins: [20, 10, 5, 2, 1, 0.5], commonNote: 500, priceStep: 10 },
  CZK: {
    notes: [5000, 2000, 1000, 500, 200, 100],
    coins: [50, 20, 10, 5, 2, 1],
    commonNote: 1000,
    priceStep: 10,
  },
  HUF: {
    notes: [20000, 10000, 5000, 2000, 1000, 500],
    coins: [200, 100, 50, 20, 10, 5],
    commonNote: 10000,
    priceStep: 100,
  },
  PLN: {
    notes: [500, 200, 100, 50, 20, 10],
    coins: [5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01],
    commonNote: 100,
    priceStep: 1,
  },
  JPY: { notes: [10000, 5000, 1000], coins: [500, 100, 50, 10, 5, 1], commonNote: 10000, priceStep: 100 },
};

/** @returns the notes and coins of a currency; null where they are not known here, and are then typed. */
export const cashOf = (code: string): Cash | null =>
  Object.hasOwn(byCode, code) ? (byCode[code] ?? null) : null;

/** Currencies whose notes and coins are known. */
export const cashCurrencies: readonly string[] = Object.keys(byCode);
