import type { ActualFrom } from '@/lib/variances/runActuals';
import type { GapLine } from '@/shared/schemas/runEvents';
import type { GapCause, GoodsFault, PressFault } from '@/shared/tables/faults';

/** What a bar of the bridge is called. */
export const gapWords: Readonly<Record<GapLine, string>> = {
  output: 'More or fewer good pieces',
  revenue: 'What it brought in',
  blanksPrice: 'Price of blanks',
  blanksUsage: 'Blanks used',
  paperPrice: 'Price of paper',
  paperUsage: 'Sheets used',
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

/** Why blanks went, as counted. */
export const lostWords: Readonly<Record<PressFault | GoodsFault, string>> = {
  pale: 'pale',
  patchy: 'patchy',
  scorched: 'scorched',
  blurred: 'blurred',
  ghost: 'ghost',
  specks: 'specks',
  steam: 'steam spots',
  pressLines: 'press lines',
  bands: 'bands',
  reversed: 'reversed',
  shade: 'wrong shade',
  crooked: 'crooked',
  hole: 'hole',
  stain: 'stain',
  coating: 'coating',
  seam: 'seam',
  label: 'label',
  wrongSize: 'wrong size',
  wrongColour: 'wrong colour',
  other: 'other fault',
};

/** Whence the actual figure comes. */
export const fromWords: Readonly<Record<ActualFrom, string>> = {
  typed: 'as typed',
  counted: 'as counted',
  goodsIn: 'by the delivery',
  standard: 'not noted, taken as planned',
};
