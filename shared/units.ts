import type { Brand } from './brand';

export type Mm = Brand<number, 'Mm'>;
export type Mm2 = Brand<number, 'Mm2'>;
export type Minutes = Brand<number, 'Minutes'>;
/** A share of a whole, 0 to 1. */
export type Ratio = Brand<number, 'Ratio'>;

export const mm = (value: number): Mm => value as Mm;
export const mm2 = (value: number): Mm2 => value as Mm2;
export const minutes = (value: number): Minutes => value as Minutes;
export const ratio = (value: number): Ratio => value as Ratio;

/*
 * Factors: NIST Special Publication 811 (2008), Appendix B.8. Those of length, area, volume and energy are
 * exact by definition; the psi follows exactly from the pound, standard gravity and the inch.
 */
export const MM_PER_INCH = 25.4;
/** A point of a page is a 72nd of an inch, ISO 32000-1. */
export const POINTS_PER_MM = 72 / MM_PER_INCH;
export const M2_PER_SQUARE_INCH = 6.4516e-4;
export const KM_PER_MILE = 1.609344;
export const ML_PER_US_FLUID_OUNCE = 29.5735295625;
export const KPA_PER_PSI = 6.894757293168;
export const KPA_PER_BAR = 100;
export const JOULES_PER_KWH = 3.6e6;

/** Two lengths closer than this are the same length: no cutter or tape measure at a bench shows it. */
export const LENGTH_TOLERANCE_MM = 0.01;

/** @returns the length in millimetres; 3.5 in is 88.9 mm, without the dust of binary multiplication. */
export const mmFromInches = (inches: number): Mm => mm(Number((inches * MM_PER_INCH).toPrecision(15)));
/** @returns the length in inches. */
export const inchesFromMm = (lengthMm: number): number => lengthMm / MM_PER_INCH;
/** @returns degrees Celsius; the difference of 32 and the ratio 1.8 are exact. */
export const celsiusFromFahrenheit = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
/** @returns degrees Fahrenheit. */
export const fahrenheitFromCelsius = (celsius: number): number => celsius * 1.8 + 32;
/** @returns kilopascals. */
export const kpaFromPsi = (psi: number): number => psi * KPA_PER_PSI;
/** @returns pounds-force per square inch. */
export const psiFromKpa = (kpa: number): number => kpa / KPA_PER_PSI;
/** @returns kilopascals. */
export const kpaFromBar = (bar: number): number => bar * KPA_PER_BAR;
/** @returns bar. */
export const barFromKpa = (kpa: number): number => kpa / KPA_PER_BAR;
/** @returns millilitres of US fluid ounces. */
export const mlFromUsFluidOunces = (ounces: number): number => ounces * ML_PER_US_FLUID_OUNCE;
/** @returns US fluid ounces. */
export const usFluidOuncesFromMl = (millilitres: number): number => millilitres / ML_PER_US_FLUID_OUNCE;
/** @returns kilometres. */
export const kmFromMiles = (miles: number): number => miles * KM_PER_MILE;
/** @returns miles. */
export const milesFromKm = (kilometres: number): number => kilometres / KM_PER_MILE;

/** @returns whether `lengthMm` is at most `limitMm`, a hair's breadth forgiven. */
export const fitsWithin = (lengthMm: number, limitMm: number): boolean =>
  lengthMm <= limitMm + LENGTH_TOLERANCE_MM;
