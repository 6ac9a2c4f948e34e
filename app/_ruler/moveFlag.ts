import type { RulerBounds } from './rulerMark';

/** A longer step is this many short ones. */
const longStep = 10;

/** Where a key takes the flag, or null if the key is none of the ruler's. */
export function moveFlag(
  key: string,
  shift: boolean,
  flag: Readonly<{ value: number; step: number; bounds: RulerBounds }>,
): number | null {
  const { value, step, bounds } = flag;
  const stride = shift ? step * longStep : step;
  const moved: Readonly<Record<string, number>> = {
    ArrowRight: value + stride,
    ArrowUp: value + stride,
    ArrowLeft: value - stride,
    ArrowDown: value - stride,
    PageUp: value + step * longStep,
    PageDown: value - step * longStep,
    Region: bounds.min,
    End: bounds.max,
  };
  const next = moved[key];
  return next === undefined ? null : tidy(Math.min(bounds.max, Math.max(bounds.min, next)));
}

/** The step nearest to where a pointer is. */
export function nearestStep(value: number, step: number): number {
  return tidy(Math.round(value / step) * step);
}

// Helpers

/** Takes away the noise of binary sums: 18.95 + 0.05 is 19. */
const tidy = (value: number) => Number(value.toFixed(6));
