import type { StallGoods } from '@/shared/schemas/stallDay';

/** What a closed stall day teaches the next. */
export interface PastDay {
  readonly stallDayId: string;
  readonly name: string;
  readonly day: string;
  readonly sellingHours: number;
  readonly payPerHour: number | null;
  /** Currency units. */
  readonly takings: number;
  /** Null where the plan of that day is not here. */
  readonly stallFee: number | null;
  readonly currency: string;
  /** What of a dry day its weather left by the plan of that day; null where nobody said. */
  readonly weather: {
    readonly factor: number;
    /** Weathers by the names of that plan, and the part of all that came that came in each, 0 to 1. */
    readonly parts: readonly { readonly name: string; readonly factor: number; readonly share: number }[];
  } | null;
  /** Pieces asked for: sold, and lost after the last was gone; by goods that were along or asked for. */
  readonly wanted: readonly (StallGoods & {
    readonly rangeName: string;
    readonly pieces: number;
    readonly sold: number;
  })[];
  /** What the plan of that day expected in that weather; null where it expected nothing. */
  readonly expected: number | null;
}
