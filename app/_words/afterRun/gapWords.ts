import type { Formatter } from '@/app/_words/formatter';
import { minutesWords } from '@/app/_words/minutesWords';
import { faultNames } from '@/app/_words/press/faultWords';
import { goodsFaultWords } from '@/app/_words/supply/deliveryWords';
import type { GapUnit } from '@/lib/variances/gapsOf';
import type { LossGroup } from '@/lib/variances/largestLosses';
import type { LostBlanks } from '@/lib/variances/lostBlanks';
import type { ActualFrom } from '@/lib/variances/runActuals';
import type { BridgeBar } from '@/lib/variances/runResult';
import type { GapLine } from '@/shared/schemas/making/runEvents';
import type { GapCause, GoodsFault, PressFault } from '@/shared/tables/faults';

/** What a bar of the bridge is called. */
export const gapWords: Readonly<Record<GapLine, string>> = {
  output: 'More or fewer good pieces',
  revenue: 'What it brought in',
  blanksPrice: 'Price of blanks',
  blanksUsage: 'Blanks used',
  paperPrice: 'Price of paper',
  paperUsage: 'Paper used',
  inkUsage: 'Ink',
  labour: 'Your time',
  overhead: 'Overhead on that time',
  freight: 'Freight',
  otherCost: 'Packaging, drive and the rest',
  fees: 'Fees',
  reprints: 'Held for reprints, not needed',
};

export const causeWords: Readonly<Record<GapCause, string>> = {
  supplierPrice: 'Supplier’s rise',
  misprint: 'Misprint',
  pressFault: 'Fault at the press',
  blankFault: 'Faulty blanks',
  artLate: 'Art came late',
  interruption: 'Interruptions',
  extraRevision: 'Extra revision',
  practice: 'Practice',
  newGoods: 'New goods',
  standardWrong: 'Reckoned wrongly',
  other: 'Other',
};

/** What stands in a bridge as a table. */
export const bridgeCsvWords = {
  lineOf: (line: GapLine): string => gapWords[line],
  causeOf: (cause: GapCause): string => causeWords[cause],
  quoted: 'Profit as quoted',
  came: 'Profit as it came',
} as const;

/** @returns why blanks went, as counted: “2 ghost, 1 not accounted for” */
export const lostWords = (lost: readonly LostBlanks[]): string =>
  lost
    .map(({ at, fault, pieces }) => {
      if (at === 'unknown') return `${pieces} not accounted for`;
      return `${pieces} ${fault === null ? 'without a cause' : faultName(fault)}`;
    })
    .join(', ');

/** What a row of the bridge is called: its line, and which way it went. */
export function barWords(
  { line, minor, from, to, actual }: BridgeBar,
  formatter: Formatter,
  locale: string,
): string {
  const name = gapWords[line];
  const more = (amount: string) => `${name}, ${amount} ${to > from ? 'more' : 'fewer'}`;
  switch (line) {
    case 'blanksPrice':
    case 'paperPrice':
      return `${name}, ${minor < 0 ? 'dearer' : 'cheaper'}`;
    case 'blanksUsage':
    case 'paperUsage':
      return more(wholeWords(Math.abs(to - from), formatter));
    case 'reprints':
      return actual === 'standard' ? name : 'Reprints beside what was held for them';
    case 'inkUsage':
      return `${name}, ${formatter.number(Math.abs(to - from), 1)} mL ${to > from ? 'more' : 'less'}`;
    case 'labour':
      return `${name}, ${minutesWords(Math.round(Math.abs(to - from) * 60), locale)} ${to > from ? 'more' : 'less'}`;
    default:
      return name;
  }
}

export const lossWords: Readonly<Record<LossGroup, string>> = {
  blanks: 'Blanks',
  paper: 'Paper',
  ink: 'Ink',
  labour: 'Your time',
  overhead: 'Overhead',
  income: 'Fewer good pieces and less income',
  rest: 'Freight, fees and the rest',
};

/** @returns the word after a number in a formula: 1 piece, 41 pieces, 0.86 h */
export const gapUnitWords = (unit: Exclude<GapUnit, 'money'>, value: number): string =>
  (unit === 'piece' || unit === 'sheet') && value !== 1 ? `${unit}s` : unit;

/** Whence the actual figure comes. */
export const fromWords: Readonly<Record<ActualFrom, string>> = {
  typed: 'as typed',
  counted: 'as counted',
  goodsIn: 'by the delivery',
  standard: 'not noted, taken as planned',
};

// Helpers

/** Nobody uses a part of a blank or a sheet: a plan in parts is told in whole ones. */
const wholeWords = (many: number, formatter: Formatter): string =>
  many < 0.5 ? 'under 1' : formatter.number(Math.round(many));

const isPressFault = (fault: PressFault | GoodsFault): fault is PressFault => fault in faultNames;

const faultName = (fault: PressFault | GoodsFault): string =>
  isPressFault(fault) ? faultNames[fault].toLowerCase() : goodsFaultWords[fault];
