import type { FrozenRate } from '@/shared/schemas/priceList';

export interface MovedRate {
  readonly label: string;
  readonly unit: string;
  readonly was: number;
  readonly is: number;
}

/** A margin that shows the same tenth of a per cent has not moved. */
const SAME_MARGIN = 0.0005;

/** @returns the rates that prices of then stand on and that are another figure now; those that are gone are none. */
export function movedRates(then: readonly FrozenRate[], now: readonly FrozenRate[]): readonly MovedRate[] {
  const known = new Map(now.map((rate) => [rate.place, rate]));
  return then.flatMap(({ place, label, value, unit }): readonly MovedRate[] => {
    const is = known.get(place);
    return is === undefined || (is.value === value && is.unit === unit)
      ? []
      : [{ label, unit: is.unit, was: value, is: is.value }];
  });
}

/** @returns whether what is left now is what a price was made for, or what it left then, whichever is less. */
export const leavesEnough = (now: number, then: number, target: number): boolean =>
  now >= Math.min(then, target) - SAME_MARGIN;
