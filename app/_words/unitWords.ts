const words: Readonly<Record<string, string>> = {
  'h/year': 'h a year',
  'mL/in2': 'mL/in²',
  'mL/m2': 'mL/m²',
  'sheets/year': 'sheets a year',
  'presses/year': 'presses a year',
  floz: 'fl oz',
  F: '°F',
  C: '°C',
};

const money: Readonly<Record<string, string>> = {
  'money/h': 'an hour',
  'money/year': 'a year',
  'money/kWh': 'a kWh',
  'money/mL': 'a mL',
  'money/order': 'an order',
  'money/mi': 'a mile',
  'money/km': 'a kilometre',
  'money/sheet': 'a sheet',
  'money/m': 'a metre',
  'money/press': 'a press',
  'money/piece': 'a piece',
  'money/ticket': 'a ticket',
};

/**
 * The unit of a rate in words.
 *
 * @param unit as in the rate catalogue
 * @param currency ISO 4217 code that takes the place of `money`
 * @example unitWords('money/h', 'USD') // => 'USD an hour'
 */
export function unitWords(unit: string, currency: string): string {
  const per = money[unit];
  if (per !== undefined) return `${currency} ${per}`;
  return unit === 'money' ? currency : (words[unit] ?? unit);
}

/** Units that count things: one of them has no s, as seconds do. */
const counted: readonly string[] = [
  'pieces',
  'sheets',
  'presses',
  'days',
  'working days',
  'years',
  'payments',
];

/** @returns a unit as it stands after 1. */
export function oneOf(unit: string): string {
  if (!counted.includes(unit)) return unit;
  return unit === 'presses' ? 'press' : unit.slice(0, -1);
}
