import type { MinorUnits } from '@/shared/money';

/** An order of n pieces of the base size; money as the channel writes prices. */
export interface StairPoint {
  readonly n: number;
  /** What it pays by the list as it is sold, whole minor units; null where so few are not sold. */
  readonly pays: MinorUnits | null;
  /** What it must bring to leave the target margin, currency units, unrounded. */
  readonly target: number;
  /** What it must bring to cover its full cost and the fees of that price, currency units, unrounded. */
  readonly fullCost: number;
}

/** Quantities that pay more than a larger order does. */
export interface StairFall {
  readonly from: number;
  readonly to: number;
  readonly cheaperAt: number;
  readonly cheaperTotal: MinorUnits;
  /** The most that an order of the stretch pays over the larger one, whole minor units. */
  readonly lost: MinorUnits;
}

/** Quantities that all pay what the first order of the next break does. */
export interface HeldStretch {
  readonly from: number;
  readonly to: number;
  readonly pays: MinorUnits;
}

/** Order total against quantity in the base size: the list as it is sold, over what each order must bring. */
export interface Staircase {
  readonly size: string;
  /** From 1, one after the other. */
  readonly points: readonly StairPoint[];
  /** Of a list as it stands only; under every other rule no total falls. */
  readonly falls: readonly StairFall[];
  /** Of a capped list only. */
  readonly held: readonly HeldStretch[];
}
