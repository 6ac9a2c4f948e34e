import type { Formatter, NameOf } from '@/app/_words/formatter';
import { jobStateChoices } from '@/app/_words/jobs/jobListWords';
import { isPlainObject } from '@/lib/merging/sameValue';

/** Where a value stands, and how its figures are written. */
interface ValuePlace {
  readonly kind: string;
  /** The name of its field. */
  readonly key: string;
  /** The unit that stands beside it; null where none does. */
  readonly unit: string | null;
  readonly formatter: Formatter;
  readonly nameOf: NameOf;
}

/** @returns one side of a difference, as its maker reads it. */
export function differenceValue(value: unknown, place: ValuePlace): string {
  if (value === undefined || value === null || value === '') return 'nothing';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return numberWords(value, place);
  if (typeof value === 'string') return textWords(value, place);
  if (Array.isArray(value)) return listWords(value, place);
  return isPlainObject(value) ? partWords(value, place) : 'something else';
}

/** @returns whether a number of this field is written with its unit, so that its name need not say it. */
export const bearsUnit = (key: string): boolean => /(?:Mm|Kpa|TemperatureC|Seconds)$/.test(key);

// Helpers

const DAY = /^\d{4}-\d{2}-\d{2}$/;
const LONGEST = 60;
/** A value of a list of choices, such as `notStated`. */
const CHOICE = /^[a-z]+(?:[A-Z][a-z]+)+$/;
/** Items of a list told one by one; of a longer one their number. */
const MOST_ITEMS = 6;

/** Amounts in the workshop's money that bear no unit. */
const amounts: ReadonlySet<string> = new Set([
  'askedPrice',
  'askedStart',
  'marketCeiling',
  'amount',
  'each',
  'priceStep',
  'upChargeStep',
  'minimumProfit',
  'changeAtLeast',
]);

/** Fields that hold one of a few words, which nobody typed. */
const choices: ReadonlySet<string> = new Set([
  ...['state', 'madeFor', 'gang', 'sewnLabel', 'audience', 'upCharging', 'selling', 'listRule', 'position'],
  ...['fit', 'raisedParts', 'replacements', 'pressure', 'protectivePaper', 'kind', 'substrate', 'coating'],
  ...['suppliedBy', 'taxMode', 'taxRounding', 'commissionBase', 'colourMatch', 'origin', 'form', 'fibre'],
]);

function numberWords(value: number, { key, unit, formatter }: ValuePlace): string {
  if (unit !== null) return formatter.rate(value, unit);
  if (amounts.has(key)) return formatter.money(value);
  if (key === 'share') return formatter.share(value);
  if (key.endsWith('Mm')) return formatter.length(value);
  if (key.endsWith('Kpa')) return formatter.pressure(value);
  if (key.endsWith('TemperatureC')) return formatter.temperature(value);
  return key.endsWith('Seconds') ? `${formatter.number(value)} s` : formatter.number(value, 4);
}

function textWords(value: string, { kind, key, formatter, nameOf }: ValuePlace): string {
  if (key === 'id' || key.endsWith('Id')) {
    const name = nameOf(key.replace(/Id$/, ''), value);
    return name === null ? 'another one' : `“${name}”`;
  }
  if (DAY.test(value)) return formatter.day(value);
  const state = kind === 'job' && key === 'state' && jobStateChoices.find((choice) => choice.value === value);
  if (state) return state.label;
  if (key === 'unit') return value.replace(/^money\//, 'money per ');
  if (choices.has(key) || CHOICE.test(value))
    return value.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return value.length > LONGEST ? `“${value.slice(0, LONGEST)}…”` : `“${value}”`;
}

function listWords(list: readonly unknown[], place: ValuePlace): string {
  if (list.length === 0) return 'nothing';
  const items = list.map((item) => differenceValue(item, place));
  return list.length > MOST_ITEMS || items.includes('something else')
    ? place.formatter.count(list.length, 'entry', 'entries')
    : items.join(', ');
}

/** What says most of a part: its figure, its size, its name. */
function partWords(part: Readonly<Record<string, unknown>>, place: ValuePlace): string {
  const { formatter } = place;
  const { value, unit, name, label, from, fibre } = part;
  if (Object.hasOwn(part, 'value')) {
    return differenceValue(value, { ...place, unit: typeof unit === 'string' ? unit : null });
  }
  if (typeof part.widthMm === 'number' && typeof part.heightMm === 'number' && name === undefined) {
    return formatter.size(part.widthMm, part.heightMm);
  }
  if (typeof name === 'string' && name !== '') return `“${name}”`;
  if (typeof label === 'string' && label !== '') return `“${label}”`;
  const of = (key: string) => differenceValue(part[key], { ...place, key, unit: null });
  if (typeof from === 'number' && typeof part.each === 'number')
    return `${of('each')} from ${formatter.number(from)}`;
  if (typeof fibre === 'string') return `${of('fibre')} ${of('share')}`;
  const figure = ['quantity', 'amount'].find((key) => typeof part[key] === 'number');
  return figure === undefined ? 'something else' : of(figure);
}
