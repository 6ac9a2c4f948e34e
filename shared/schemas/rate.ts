import type { RateUnit } from '@/shared/tables/rateCatalogue';
import { z } from './z';

const rateOrigins = ['typical', 'yours', 'measured'] as const;
export type RateOrigin = (typeof rateOrigins)[number];

/** A day in the form of ISO 8601, YYYY-MM-DD. */
export const daySchema = z.iso.date();

/** A figure the maker stands on: its value, the unit it was typed in, the day it was set, and whence it came. */
export interface Rate<Unit extends RateUnit = RateUnit> {
  readonly value: number;
  readonly unit: Unit;
  readonly date: string;
  readonly origin: RateOrigin;
  /** How many observations a measured value rests on. */
  readonly count?: number | undefined;
}

/**
 * A rate that may be missing. Missing is null and never 0: the check tells of it.
 *
 * @param units units it may be typed in, the usual one first
 * @param limits smallest and largest value that can be meant at all
 */
export const rateSchema = <const Unit extends RateUnit>(
  units: readonly [Unit, ...Unit[]],
  limits: { readonly min?: number; readonly max?: number } = {},
) =>
  z
    .strictObject({
      value: z
        .number()
        .min(limits.min ?? 0)
        .max(limits.max ?? 1e9),
      unit: z.enum(units),
      date: daySchema,
      origin: z.enum(rateOrigins),
      count: z.int().min(1).optional(),
    })
    .nullable()
    .default(null);

/** A rate that is a share of a whole and must stay under 1. */
export const shareSchema = (max = 0.95) => rateSchema(['share'], { max });
