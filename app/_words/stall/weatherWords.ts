import { listed } from '@/app/_words/listed';
import { daysInOrder } from '@/lib/stall/sellingDays';
import type { StallDay } from '@/shared/schemas/stallDay';

/** Days of selling and the weathers they may have, of a stall day or of its fixed plan. */
interface WeatherDays {
  readonly days: readonly Pick<StallDay['days'][number], 'day' | 'weight'>[];
  readonly weathers: readonly Pick<StallDay['weathers'][number], 'id' | 'name'>[];
}

/** A weather of one day, or one of each day. */
interface WeatherOfDays {
  /** As the sums name it. */
  readonly weather: string;
  readonly weatherIds: readonly string[];
}

/** A weather as sentences name it. */
interface WeatherTold {
  readonly label: string;
  /** Days it is of. */
  readonly days: number;
}

/** @returns what a weather is called: “wet”, “showers on both days”, “dry and wet”; “wet, then dry” where days differ in weight, “dry and wet, then dry” where only some do */
export function weatherLabel(
  { weather, weatherIds }: WeatherOfDays,
  { days, weathers }: WeatherDays,
): string {
  const names = weatherIds.map((id) => weathers.find((one) => one.id === id)?.name);
  const known = names.flatMap((name) => name ?? []);
  const [first] = known;
  if (names.length < 2 || known.length < names.length || first === undefined) return weather;
  if (new Set(weatherIds).size === 1) return `${first} on ${all(names.length)}`;
  return inTheirOrder(known, daysOfOneWeight(days));
}

/** @returns the same with the days it is of */
export const weatherTold = (weather: WeatherOfDays, days: WeatherDays): WeatherTold => ({
  label: weatherLabel(weather, days),
  days: weather.weatherIds.length,
});

/** @returns “when it is wet”, “with showers” */
export const whenWeather = (label: string): string =>
  isQuality(label) ? `when it is ${label}` : `with ${label}`;

/** @returns “a day that is wet”, “a day of showers”, “wet on both days” */
export function dayOfWeather({ label, days }: WeatherTold): string {
  if (days > 1) return label;
  return isQuality(label) ? `a day that is ${label}` : `a day of ${label}`;
}

/** @returns “on a day that is certainly wet”, “on a day that is sure to bring showers”, “certainly wet on both days” */
export function certainly({ label, days }: WeatherTold): string {
  if (days > 1) return `certainly ${label}`;
  return isQuality(label) ? `on a day that is certainly ${label}` : `on a day that is sure to bring ${label}`;
}

/** @returns “unless it is sure to be wet”, “unless it is sure to bring showers” */
export const unlessSure = (label: string): string =>
  `unless it is sure to ${isQuality(label) ? 'be' : 'bring'} ${label}`;

// Helpers

/** Places of days, as these follow one another. */
type Places = readonly number[];

function daysOfOneWeight(days: WeatherDays['days']): readonly Places[] {
  const weights = daysInOrder({ days }).map(({ weight }) => weight);
  return [...new Set(weights)].map((weight) => weights.flatMap((one, at) => (one === weight ? [at] : [])));
}

/** Weathers of days of one weight may have come in any order, so “then” stands only where that is one. */
function inTheirOrder(names: readonly string[], weights: readonly Places[]): string {
  const namesOf = (places: Places) => places.map((at) => names[at] ?? '');
  const isOne = (places: Places) => new Set(namesOf(places)).size === 1;
  if (weights.length < 2) return listed(names);
  if (weights.every(isOne)) return names.join(', then ');
  const told = (places: Places) =>
    isOne(places) ? namesOf(places).join(', then ') : listed(namesOf(places));
  const isInTurn = weights.every((places) => (places.at(-1) ?? 0) - (places[0] ?? 0) < places.length);
  return isInTurn
    ? weights.map(told).join(', then ')
    : weights.map((places) => `${namesOfDays(namesOf(places))} on ${dayNumbers(places)}`).join(', ');
}

const namesOfDays = (names: readonly string[]): string =>
  new Set(names).size === 1 ? (names[0] ?? '') : listed(names);

const dayNumbers = (places: Places): string =>
  `${places.length > 1 ? 'days' : 'day'} ${listed(places.map((at) => String(at + 1)))}`;

const all = (days: number): string => (days === 2 ? 'both days' : `all ${days} days`);

const qualities: ReadonlySet<string> = new Set(
  'bad bright clear cold cool damp fair fine good grey hot mild mixed overcast warm wet'.split(' '),
);

/** Where a name goes on to say when, or names another weather. */
const goesOn = /,|\s(?:all|and|at|but|from|in|later|most|on|or|then|until|with)\b/;

/** Whether a name says how a day is, as “wet” and “rainy” do, and not what comes, as “showers” and “heavy rain” do. */
function isQuality(label: string): boolean {
  const [first = ''] = label.toLowerCase().split(goesOn);
  const word = first.trim().split(/\s+/).at(-1) ?? '';
  return qualities.has(word) || /[^aeiou]y$/.test(word);
}
