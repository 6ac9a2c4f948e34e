/** One mark on the price ruler: what it means and where it lies. */
export interface RulerMark {
  readonly id: string;
  readonly label: string;
  readonly value: number;
}

export interface RulerBounds {
  readonly min: number;
  readonly max: number;
}

/** Where a value lies between the bounds, 0 at the left end and 1 at the right; what lies outside stays at the end. */
export function ratioOnRuler(value: number, { min, max }: RulerBounds): number {
  return max > min ? Math.min(1, Math.max(0, (value - min) / (max - min))) : 0;
}
