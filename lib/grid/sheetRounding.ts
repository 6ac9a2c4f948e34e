import { DOUBLE_DIGITS, roundDecimal } from '@/shared/decimal';

/*
 * Rounding functions of the formula engine, by OpenFormula 1.3 (OASIS, 2021), part 4, section 6.17, on the
 * decimal a number was meant to be. The engine's own work on the binary value: ROUNDUP(1.1*3/3.3;0) comes
 * out as 2 there, which would buy a sheet too many.
 */

const clean = (value: number): number => Number(value.toPrecision(DOUBLE_DIGITS));

/** Half away from zero. */
export const round = (value: number, digits = 0): number => roundDecimal(value, Math.trunc(digits), 'halfUp');
/** Away from zero. */
export const roundUp = (value: number, digits = 0): number => roundDecimal(value, Math.trunc(digits), 'up');
/** Towards zero. */
export const roundDown = (value: number, digits = 0): number =>
  roundDecimal(value, Math.trunc(digits), 'down');
/** Towards minus infinity. */
export const int = (value: number): number => roundDecimal(value, 0, 'floor');

/** Towards plus infinity on multiples of a step, or away from zero with a mode; null for mixed signs. */
export function ceiling(value: number, step?: number, mode = 0): number | null {
  return multiple(value, step, mode === 0 ? 'ceiling' : 'up');
}

/** Towards minus infinity on multiples of a step, or towards zero with a mode; null for mixed signs. */
export function floor(value: number, step?: number, mode = 0): number | null {
  return multiple(value, step, mode === 0 ? 'floor' : 'down');
}

/** The nearest multiple; a tie goes to the greater one. */
export function mround(value: number, step: number): number {
  if (step === 0) return 0;
  const size = Math.abs(step);
  const count = clean(value / size);
  return clean(roundDecimal(count + 0.5, 0, 'floor') * size);
}

/** What is left after whole divisions; the sign follows the divisor. Null when dividing by 0. */
export function mod(value: number, divisor: number): number | null {
  if (divisor === 0) return null;
  return clean(value - clean(divisor * int(clean(value / divisor)))) || 0;
}

/** Whole part of a division. Null when dividing by 0. */
export function quotient(value: number, divisor: number): number | null {
  return divisor === 0 ? null : roundDecimal(clean(value / divisor), 0, 'down');
}

function multiple(
  value: number,
  step: number | undefined,
  mode: 'ceiling' | 'floor' | 'up' | 'down',
): number | null {
  if (value === 0 || step === 0) return 0;
  const size = step ?? Math.sign(value);
  if (Math.sign(size) !== Math.sign(value)) return null;
  // The count is positive; in the direction of the value itself, so that modes speak of the value.
  const count = roundDecimal(clean(Math.abs(value / size)), 0, countMode(mode, value < 0));
  return clean(count * Math.abs(size)) * Math.sign(value) || 0;
}

function countMode(mode: 'ceiling' | 'floor' | 'up' | 'down', negative: boolean): 'up' | 'down' {
  if (mode === 'up' || mode === 'down') return mode;
  return (mode === 'ceiling') === negative ? 'down' : 'up';
}
