import type { Recipe } from '@/shared/schemas/job';
import { celsiusFromFahrenheit, fahrenheitFromCelsius } from '@/shared/units';

type Typed = Recipe['temperature'];

/** @returns the typed temperature in °C. */
export const celsiusOf = ({ value, unit }: Typed): number =>
  unit === 'C' ? value : celsiusFromFahrenheit(value);

/**
 * A temperature as it would be set on a dial in whole degrees of the maker's scale.
 *
 * @param celsius °C
 * @param round towards which whole degree
 */
export function dialTemperature(celsius: number, unit: Typed['unit'], round: 'nearest' | 'down'): Typed {
  const degrees = unit === 'C' ? celsius : fahrenheitFromCelsius(celsius);
  // A hair added first, so that 400 °F is not 399 after the way through °C.
  const value = round === 'nearest' ? Math.round(degrees) : Math.floor(degrees + 1e-9);
  return { value, unit };
}
