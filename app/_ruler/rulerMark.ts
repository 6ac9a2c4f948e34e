/** One mark on the price ruler: what it means and where it lies. */
export type RulerMark = Readonly<{ id: string; label: string; value: number }>;

export type RulerBounds = Readonly<{ min: number; max: number }>;

/** Where a value lies between the bounds, 0 at the left end and 1 at the right; what lies outside stays at the end. */
export function ratioOnRuler(value: number, { min, max }: RulerBounds): number {
  return max > min ? Math.min(1, Math.max(0, (value - min) / (max - min))) : 0;
}
