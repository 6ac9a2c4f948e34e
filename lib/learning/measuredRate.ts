import { sameValue } from '@/lib/merging/sameValue';
import type { Rate } from '@/shared/schemas/rate';
import type { RateUnit } from '@/shared/tables/rateCatalogue';
import type { LearnedPlace } from './lesson';

/** Measured figures are written to so many digits: beyond them they say nothing. */
const DIGITS = 4;

/** @returns a measured figure as far as it says something. */
export const writtenFigure = (value: number): number => Number(value.toPrecision(DIGITS));

interface Held {
  readonly kind: LearnedPlace['kind'];
  readonly id: string;
  readonly path: LearnedPlace['path'];
  readonly before: Rate | null;
}

/**
 * What a place would hold.
 *
 * @param origin a price paid is the maker's own; all else is measured in so many observations
 * @returns nothing where it holds the figure already
 */
export function measuredPlace(
  { kind, id, path, before }: Held,
  value: number,
  unit: RateUnit,
  day: string,
  origin: { readonly count: number } | 'yours',
): readonly LearnedPlace[] {
  const figure = origin === 'yours' ? value : writtenFigure(value);
  if (before !== null && before.value === figure && (origin === 'yours' || before.count === origin.count))
    return [];
  const after =
    origin === 'yours'
      ? { value: figure, unit, date: day, origin }
      : { value: figure, unit, date: day, origin: 'measured' as const, count: origin.count };
  return sameValue(before, after) ? [] : [{ kind, id, path: [...path], before: heldRate(before), after }];
}

// Helpers

function heldRate(rate: Rate | null): LearnedPlace['before'] {
  if (rate === null) return null;
  const { value, unit, date, origin, count } = rate;
  return { value, unit, date, origin, ...(count === undefined ? {} : { count }) };
}
