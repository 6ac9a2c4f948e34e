import type { MinorUnits } from '@/shared/money';

/** So many pieces of a size at one price, whole minor units as the paper writes prices. */
export interface SoldSize {
  readonly size: string;
  readonly quantity: number;
  readonly each: MinorUnits;
  readonly total: MinorUnits;
}

/** What a line adds or takes off beside its pieces, in words. */
interface LineCharge {
  readonly what: string;
  readonly amount: MinorUnits;
}

/** A line as it is sold. */
export interface SoldLine {
  readonly jobId: string;
  readonly lineId: string;
  readonly name: string;
  /** A size may stand twice, at two prices. */
  readonly sizes: readonly SoldSize[];
  readonly start: MinorUnits;
  readonly charges: readonly LineCharge[];
  /** Prints of the job's line that are left out. */
  readonly without: readonly string[];
}

export const soldSize = (size: string, quantity: number, each: MinorUnits): SoldSize => ({
  size,
  quantity,
  each,
  total: (each * quantity) as MinorUnits,
});

/** @returns good pieces of a line. */
export const soldPieces = (line: Pick<SoldLine, 'sizes'>): number =>
  line.sizes.reduce((sum, { quantity }) => sum + quantity, 0);

/** @returns what a line comes to, with all that stands beside its pieces. */
export const lineTotal = ({
  sizes,
  start,
  charges,
}: Omit<SoldLine, 'jobId' | 'lineId' | 'name' | 'without'>) =>
  [...sizes.map(({ total }) => total), start, ...charges.map(({ amount }) => amount)].reduce<number>(
    (sum, amount) => sum + amount,
    0,
  );
