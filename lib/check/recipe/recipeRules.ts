import { celsiusOf, dialTemperature } from '@/lib/check/celsius';
import { isScaleSlip } from '@/lib/check/isScaleSlip';
import { polyesterShare } from '@/lib/check/polyesterShare';
import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { PlacementPlace } from '@/lib/job/places';
import { placementPlaces } from '@/lib/job/places';
import type { Finding } from '@/shared/finding';
import type { Blank } from '@/shared/schemas/blank';
import { textileKinds } from '@/shared/schemas/blank';
import { recipeRanges } from '@/shared/tables/recipeRanges';
import { scaleSlips, thresholds } from '@/shared/tables/thresholds';
import { celsiusFromFahrenheit } from '@/shared/units';
import { pressureRule } from './pressure';

/** REC-01: temperature against the starting range of the substrate; polyester melts above all ranges. */
const temperature: Rule = ({ resolved }) => placementPlaces(resolved).flatMap(judgeTemperature);

function judgeTemperature(place: PlacementPlace): readonly Finding[] {
  const typed = place.placed.placement.recipe.temperature;
  if (isScaleSlip(typed)) return [];
  const { blank } = place.line;
  const celsius = celsiusOf(typed);
  const range = startingRange(blank);
  const isCold = celsius < range.low - thresholds.recipe.temperatureStep.value;
  const isHot = celsius > range.high + thresholds.recipe.temperatureStep.value;
  const polyesterLimit = thresholds.safeTemperature.polyester.value;
  const melts =
    textileKinds.includes(blank.kind) && polyesterShare(blank) > 0 && celsius > polyesterLimit + 1e-9;
  if (!isCold && !isHot && !melts) return [];
  const off = isCold ? range.low - celsius : celsius - range.high;
  const isFar = off > thresholds.recipe.temperatureOff.value + 1e-9;
  const proposed = isCold
    ? dialTemperature(range.low, typed.unit, 'nearest')
    : dialTemperature(range.high, typed.unit, range.isCapped ? 'down' : 'nearest');
  return [
    makeFinding({
      id: 'REC-01',
      severity: melts || isFar ? 'stop' : 'caution',
      variant: melts ? 'melts' : isCold ? 'cold' : 'hot',
      where: place.where('recipe', 'temperature'),
      found: { value: celsius, unit: '°C' },
      limit: { value: melts ? polyesterLimit : isCold ? range.low : range.high, unit: '°C' },
      facts: {
        placement: place.placed.placement.name,
        substrate: recipeRanges[blank.substrate].label,
        temperatureC: celsius,
        lowC: range.low,
        highC: range.high,
        limitC: polyesterLimit,
      },
      waivable: !melts,
      fix: {
        label: 'setTemperature',
        facts: { temperatureC: celsiusOf(proposed) },
        changes: [place.change(['recipe', 'temperature'], proposed)],
      },
    }),
  ];
}

interface CelsiusRange {
  readonly low: number;
  readonly high: number;
  /** Whether the blank's own limit, and not the table, sets the upper end. */
  readonly isCapped: boolean;
}

/** The range of the table, lowered where the sheet of the blank's maker asks for less heat: it always wins. */
function startingRange(blank: Blank): CelsiusRange {
  const [low, high] = recipeRanges[blank.substrate].fahrenheit;
  const table = { low: celsiusFromFahrenheit(low), high: celsiusFromFahrenheit(high) };
  const safe =
    blank.maxTemperatureC === null
      ? Number.POSITIVE_INFINITY
      : Math.max(0, blank.maxTemperatureC - thresholds.safeTemperature.near.value);
  if (safe >= table.high) return { ...table, isCapped: false };
  // A degree wide at least, so that a dial in whole degrees can be set inside.
  return { low: Math.min(table.low, safe - 1), high: safe, isCapped: true };
}

/** REC-02: dwell against the starting range; half the range's own width, or 15 s, is far outside. */
const dwell: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) => {
    const seconds = place.placed.placement.recipe.dwellSeconds;
    const row = recipeRanges[place.line.blank.substrate];
    const [shortest, longest] = row.dwellSeconds;
    if (seconds >= shortest && seconds <= longest) return [];
    const isShort = seconds < shortest;
    const off = isShort ? shortest - seconds : seconds - longest;
    const far = Math.max((longest - shortest) / 2, thresholds.recipe.dwellOff.value);
    const nearest = isShort ? shortest : longest;
    return [
      makeFinding({
        id: 'REC-02',
        severity: off > far + 1e-9 ? 'stop' : 'caution',
        variant: isShort ? 'short' : 'long',
        where: place.where('recipe', 'dwellSeconds'),
        found: { value: seconds, unit: 's' },
        limit: { value: nearest, unit: 's' },
        facts: {
          placement: place.placed.placement.name,
          substrate: row.label,
          seconds,
          shortest,
          longest,
        },
        fix: {
          label: 'setDwell',
          facts: { seconds: nearest },
          changes: [place.change(['recipe', 'dwellSeconds'], nearest)],
        },
      }),
    ];
  });

/** REC-04: a number that only makes sense in the other scale, judged as it was typed. */
const scaleSlip: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) => {
    const typed = place.placed.placement.recipe.temperature;
    if (!isScaleSlip(typed)) return [];
    const { meant } = scaleSlips[typed.unit];
    return [
      makeFinding({
        id: 'REC-04',
        severity: 'stop',
        variant: typed.unit,
        where: place.where('recipe', 'temperature'),
        found: { value: typed.value, unit: `°${typed.unit}` },
        facts: { placement: place.placed.placement.name, typed: typed.value, unit: typed.unit, meant },
        fix: {
          label: 'switchScale',
          facts: { typed: typed.value, meant },
          changes: [place.change(['recipe', 'temperature', 'unit'], meant)],
        },
      }),
    ];
  });

export const recipeRules: readonly Rule[] = [temperature, dwell, pressureRule, scaleSlip];
