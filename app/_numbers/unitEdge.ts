import { DOUBLE_DIGITS } from '@/shared/decimal';
import {
  barFromKpa,
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  inchesFromMm,
  kmFromMiles,
  kpaFromBar,
  kpaFromPsi,
  milesFromKm,
  mlFromUsFluidOunces,
  mmFromInches,
  psiFromKpa,
  usFluidOuncesFromMl,
} from '@/shared/units';
import type { Measures } from './measures';

/** The 32 that is added leaves noise of a fixed size, whatever the temperature. */
const SCALE_DECIMALS = 9;

/** Quantities that are kept in one unit and typed in another. */
export type EdgeKind = 'length' | 'rollLength' | 'distance' | 'temperature' | 'pressure' | 'volume' | 'share';

/** The way between what is kept and what is typed; what was typed comes back as it was. */
export interface UnitEdge {
  /** What stands after the number. */
  readonly unit: string;
  readonly shown: (kept: number) => number;
  readonly kept: (typed: number) => number;
}

/** @returns the edge of a quantity for a maker's units: lengths are kept in mm (of rolls typed in m), distances in km, temperatures in °C, pressures in kPa, volumes in mL, shares as 0 to 1. */
export function unitEdge(kind: EdgeKind, { units }: Measures): UnitEdge {
  switch (kind) {
    case 'length':
      return units.length === 'in' ? edge('in', inchesFromMm, mmFromInches) : same('mm');
    case 'rollLength':
      return edge(
        'm',
        (lengthMm) => lengthMm / 1000,
        (metres) => tidy(metres * 1000),
      );
    case 'distance':
      return units.distance === 'mi' ? edge('mi', milesFromKm, kmFromMiles) : same('km');
    case 'temperature':
      return units.temperature === 'F'
        ? edge(
            '°F',
            (celsius) => Number(fahrenheitFromCelsius(celsius).toFixed(SCALE_DECIMALS)),
            celsiusFromFahrenheit,
          )
        : same('°C');
    case 'pressure':
      if (units.pressure === 'psi') return edge('psi', psiFromKpa, kpaFromPsi);
      return units.pressure === 'bar' ? edge('bar', barFromKpa, kpaFromBar) : same('kPa');
    case 'volume':
      return units.volume === 'floz' ? edge('fl oz', usFluidOuncesFromMl, mlFromUsFluidOunces) : same('mL');
    case 'share':
      return edge(
        '%',
        (share) => share * 100,
        (percent) => tidy(percent / 100),
      );
    default:
      return kind satisfies never;
  }
}

// Helpers

const same = (unit: string): UnitEdge => ({ unit, shown: tidy, kept: (typed) => typed });

const edge = (unit: string, shown: (kept: number) => number, kept: UnitEdge['kept']): UnitEdge => ({
  unit,
  shown: (value) => tidy(shown(value)),
  kept,
});

/** Going there and back leaves noise in the last binary digit, never in the fifteenth decimal one. */
const tidy = (value: number): number => Number(value.toPrecision(DOUBLE_DIGITS));
