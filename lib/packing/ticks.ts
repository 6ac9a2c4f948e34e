import { LENGTH_TOLERANCE_MM } from '@/shared/units';

/**
 * Layouts are searched in whole hundredths of a micrometre, so that lengths add up and compare exactly; a thousand
 * pieces in a row then gather no more than the tolerance.
 */
const TICKS_PER_MM = 1e5;

/** Below a thousandth of a tick a difference comes from binary fractions alone. */
const NOISE = 1e-3;

/** @returns ticks a piece takes with its gutter, rounded up: the gutter is never less than asked. */
export const pieceTicks = (lengthMm: number, gutterMm: number): number =>
  Math.ceil((lengthMm + gutterMm) * TICKS_PER_MM - NOISE);

/**
 * Ticks between two margins. One gutter is added, as the last piece of a row needs none, and the tolerance.
 *
 * @returns 0 or less where the margins leave nothing
 */
export function binTicks(lengthMm: number, marginMm: number, gutterMm: number): number {
  const bin = lengthMm - 2 * marginMm;
  return bin <= 0 ? 0 : Math.floor((bin + gutterMm + LENGTH_TOLERANCE_MM) * TICKS_PER_MM + NOISE);
}

/** Ticks the margin takes. */
const marginTicks = (marginMm: number): number => Math.ceil(marginMm * TICKS_PER_MM - NOISE);

/** @returns millimetres from the paper's edge of a place `ticks` inside the margin. */
export const placeMm = (ticks: number, marginMm: number): number =>
  Math.round(marginTicks(marginMm) + ticks) / TICKS_PER_MM;

/** @returns ticks inside the margin of a place given in millimetres from the paper's edge. */
export const placeTicks = (mm: number, marginMm: number): number =>
  Math.round(mm * TICKS_PER_MM) - marginTicks(marginMm);

/** @returns a length in millimetres, its gutter taken off. */
export const lengthMmOf = (ticks: number, gutterMm: number): number =>
  Math.max(0, Math.round(ticks - gutterMm * TICKS_PER_MM)) / TICKS_PER_MM;
