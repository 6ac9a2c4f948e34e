import type { Recipe } from '@/shared/schemas/job';
import { scaleSlips } from '@/shared/tables/thresholds';

/** @returns whether the number typed only makes sense in the other scale, such as 390 in °C. */
export function isScaleSlip({ value, unit }: Recipe['temperature']): boolean {
  const { from, to } = scaleSlips[unit];
  return value >= from && value <= to;
}
