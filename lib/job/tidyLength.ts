import type { Workshop } from '@/shared/schemas/workshop';
import { MM_PER_INCH } from '@/shared/units';

/**
 * A length to propose: rounded down to what a maker would type, a hundredth of an inch or a tenth of a
 * millimetre, so that what is proposed still fits.
 *
 * @param lengthMm mm, above 0
 * @returns mm
 */
export function tidyLength(lengthMm: number, unit: Workshop['units']['length']): number {
  const perUnit = unit === 'in' ? 100 / MM_PER_INCH : 10;
  const steps = Math.floor(lengthMm * perUnit + 1e-6);
  return steps > 0 ? Number((steps / perUnit).toPrecision(12)) : lengthMm;
}

export interface SizeMm {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** @returns the size scaled by a factor up to 1 and rounded down to what a maker would type. */
export const scaledSize = (size: SizeMm, factor: number, unit: Workshop['units']['length']): SizeMm => ({
  widthMm: tidyLength(size.widthMm * factor, unit),
  heightMm: tidyLength(size.heightMm * factor, unit),
});

/** @returns the size scaled by a factor from 1 and rounded up to what a maker would type. */
export function enlargedSize(size: SizeMm, factor: number, unit: Workshop['units']['length']): SizeMm {
  const perUnit = unit === 'in' ? 100 / MM_PER_INCH : 10;
  const up = (lengthMm: number) =>
    Number((Math.ceil(lengthMm * factor * perUnit - 1e-6) / perUnit).toPrecision(12));
  return { widthMm: up(size.widthMm), heightMm: up(size.heightMm) };
}
