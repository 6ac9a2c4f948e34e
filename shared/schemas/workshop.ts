import { currencyCodes } from '@/shared/tables/currencies';
import { type RateName, type RateUnit, rateDefinition, rateNames } from '@/shared/tables/rateCatalogue';
import { idSchema, lengthMmSchema, nameSchema } from './basics';
import { blockSchema, daysOffSchema } from './benchWeek';
import { chargesSchema, usualCharges } from './charges';
import { habitsSchema, untoldHabits } from './habits';
import { ownRowSchema } from './ownRow';
import { rateSchema, shareSchema } from './rate';
import {
  papersSchema,
  quotingSchema,
  sellerSchema,
  untoldPapers,
  untoldSeller,
  usualQuoting,
} from './seller';
import { breaksSchema, chosenBreaksSchema, listRuleSchema, usualChosenBreaks } from './sellingRule';
import { z } from './z';

function anyRateSchema(name: RateName) {
  const { units } = rateDefinition(name);
  return rateSchema<RateUnit>(units, units[0] === 'share' ? { max: 0.95 } : {});
}

const shapeOf = <Schema>(schemaOf: (name: RateName) => Schema) =>
  Object.fromEntries(rateNames.map((name) => [name, schemaOf(name)])) as Record<RateName, Schema>;

/** Every workshop rate; a name that is left out counts as missing. */
export const ratesSchema = z.strictObject(shapeOf(anyRateSchema));

/** Rates that one job sets differently; a name that is left out follows the workshop. */
export const rateOverridesSchema = z.strictObject(
  shapeOf((name) => anyRateSchema(name).unwrap().unwrap().optional()),
);

/** The words of a menu in the printer's window, to be chosen at every print. */
const noteSchema = z.string().trim().min(1).max(120).nullable().default(null);

/** `unsure` is the answer of who was asked and does not know. */
const printedSides = ['up', 'down', 'unsure'] as const;

/** A printer; its wear is units of production, or straight line where age wears it out first. */
export const printerSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  powerKw: rateSchema(['kW']),
  unattendedMinutesPerSheet: rateSchema(['min']),
  price: rateSchema(['money']),
  resale: rateSchema(['money']),
  lifeSheets: rateSchema(['sheets'], { min: 1 }),
  lifeYears: rateSchema(['years']),
  sheetsPerYear: rateSchema(['sheets/year']),
  marginMm: z.number().min(0).max(100),
  borderless: z.boolean(),
  /** Which side of a sheet in its tray it prints; null where the maker has not yet found out. */
  printedSide: z.enum(printedSides).nullable().default(null),
  /** What its maker rates it for; null where nobody looked it up. */
  ratedSheetsPerMonth: z.number().positive().max(1e6).nullable().default(null),
  /** How much of the grey that three inks have in common it prints with black; 0 where it has no black. */
  blackShare: shareSchema(1),
  /** Whether it has light inks beside the full ones; null where nobody was asked. */
  lightInks: z.boolean().nullable().default(null),
  /** The longest page it takes; null where nobody looked it up. */
  longestPageMm: lengthMmSchema.nullable().default(null),
  /** What to choose for colours in the printer's window; null where nothing is noted. */
  colourProfile: noteSchema,
});

/** Of a press whose papers nobody has looked into. */
export const unrated = { openingMm: null, pressesPerDay: null, hotHoursPerDay: null };

export const pressKinds = ['flat', 'mug', 'tumbler', 'oven'] as const;

/** A heat source. The platen is null where the kind has none. */
export const pressSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  kind: z.enum(pressKinds),
  platen: z.strictObject({ widthMm: lengthMmSchema, heightMm: lengthMmSchema }).nullable(),
  powerKw: rateSchema(['kW']),
  warmUpMinutes: rateSchema(['min']),
  holdingShare: shareSchema(1),
  price: rateSchema(['money']),
  resale: rateSchema(['money']),
  lifePresses: rateSchema(['presses'], { min: 1 }),
  lifeYears: rateSchema(['years']),
  pressesPerYear: rateSchema(['presses/year']),
  partsPrice: rateSchema(['money']),
  partsInterval: rateSchema(['presses'], { min: 1 }),
  protectivePaper: rateSchema(['money/press']),
  tape: rateSchema(['money/press']),
  /** What the maker of the press states; null where nobody looked it up. */
  rating: z
    .strictObject({
      openingMm: lengthMmSchema.nullable().default(null),
      pressesPerDay: z.number().positive().max(1e5).nullable().default(null),
      hotHoursPerDay: z.number().positive().max(24).nullable().default(null),
    })
    .default(unrated),
});

/** Longer than any cut sheet that is sold. */
const LARGEST_SHEET_MM = 2000;

const papers = ['transfer', 'other'] as const;

const paperForms = ['cut', 'roll'] as const;

/** Paper to print on: a cut sheet, or a roll that is cut behind the last print. */
export const sheetSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  form: z.enum(paperForms).default('cut'),
  widthMm: lengthMmSchema.max(LARGEST_SHEET_MM),
  /** Of a cut sheet; of a roll the longest print the printer makes in one go. */
  heightMm: lengthMmSchema.max(LARGEST_SHEET_MM),
  /** What a new roll holds; null for cut sheets and where nobody has said. */
  rollLengthMm: z.number().positive().max(1e6).nullable().default(null),
  /** Coated for sublimation, or any other: copier paper, photo paper. */
  paper: z.enum(papers).default('transfer'),
  /** Grammage by ISO 536. */
  gramsPerSquareMetre: z.number().positive().max(1000).nullable(),
  price: rateSchema(['money/sheet', 'money/m']),
  /** Kind of paper to choose in the printer's window; null where nothing is noted. */
  mediaSetting: noteSchema,
});

export const packagingSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  perPiece: rateSchema(['money/piece']),
});

export const taxModes = ['added', 'inside', 'none'] as const;

/** A way of selling: what tax and which fees stand between the price and the maker. */
export const channelSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  kind: z.enum(['order', 'stall', 'wholesale', 'consignment']),
  /** Whether the prices typed and shown have tax added later, already inside, or none; null is not yet set. */
  taxMode: z.enum(taxModes).nullable(),
  tax: shareSchema(1),
  commission: shareSchema(),
  commissionBase: z.enum(['withoutTax', 'withTax']),
  cardFee: shareSchema(),
  cardFixedFee: rateSchema(['money/ticket']),
  /** Share of the money that comes by card; at a stall also the share of tickets. */
  cardShare: shareSchema(1),
  /** Pieces on one ticket, at a stall. */
  piecesPerTicket: rateSchema(['pieces'], { min: 1 }),
  /** What part of the last buyer's price is invoiced: 1 when sold to that buyer, about a half in wholesale. */
  shareOfRetail: shareSchema(1),
  /** Minutes of selling and serving that a piece takes, on top of making it. */
  sellingMinutesPerPiece: rateSchema(['min']),
  /** What a day of selling costs in money: stall, drive, parking, insurance; missing where there are no such days. */
  dayCost: rateSchema(['money']),
  /** Pieces sold on such a day, which share its cost. */
  dayPieces: rateSchema(['pieces'], { min: 1 }),
  /** Days until the money is there; null where not yet set. */
  cashInDays: z.int().min(0).max(1000).nullable().default(null),
});

export const workshopSchema = z.strictObject({
  name: nameSchema,
  currency: z.string().refine((code) => currencyCodes.includes(code), {
    error: 'is not a currency code of ISO 4217 with a minor unit',
  }),
  locale: z.string().max(40).refine(isLocale, { error: 'is not a language tag such as en-US' }),
  units: z.strictObject({
    length: z.enum(['in', 'mm']),
    temperature: z.enum(['F', 'C']),
    pressure: z.enum(['psi', 'kPa', 'bar']),
    volume: z.enum(['mL', 'floz']),
    distance: z.enum(['mi', 'km']),
  }),
  rates: ratesSchema,
  printers: z.array(printerSchema).max(20),
  presses: z.array(pressSchema).max(20),
  sheets: z.array(sheetSchema).max(50),
  packagings: z.array(packagingSchema).max(50),
  channels: z.array(channelSchema).max(20),
  /** When the bench is free each week; null is not yet set. */
  blocks: z.array(blockSchema).max(40).nullable().default(null),
  daysOff: z.array(daysOffSchema).max(200).default([]),
  /** Whoever stands at the head of papers. */
  seller: sellerSchema.default(untoldSeller),
  papers: papersSchema.default(untoldPapers),
  quoting: quotingSchema.default(usualQuoting),
  circuit: z
    .strictObject({
      volts: z.number().min(50).max(1000),
      amps: z.number().positive().max(200),
      otherWatts: z.number().min(0).max(50_000),
    })
    .nullable()
    .default(null),
  room: z.strictObject({
    ventilated: z.boolean().nullable().default(null),
    foodOvenUsed: z.boolean().default(false),
  }),
  habits: habitsSchema.default(untoldHabits),
  policy: z.strictObject({
    /** How lists of what is made to order are suggested, unless a line says otherwise. */
    listRule: listRuleSchema.default('capped'),
    /** The maker's own first quantities of price breaks, rising; null lets the sums choose them for each line. */
    breaks: breaksSchema.nullable().default(null),
    chosenBreaks: chosenBreaksSchema.default(usualChosenBreaks),
    /** Prices end on whole multiples of this, in currency units. */
    priceStep: z.number().positive().max(1e6),
    gutterMm: z.number().min(0).max(100),
    tapeMarginMm: z.number().min(0).max(100),
    /** True where the yearly overhead already pays for worn machines. */
    wearInOverhead: z.boolean(),
    /** Whether tax is rounded on each line of a paper or once for it; the local authority says which. */
    taxRounding: z.enum(['document', 'line']).default('document'),
    /** Size up-charges are whole multiples of this, in currency units; null follows `priceStep`. */
    upChargeStep: z.number().positive().max(1e6).nullable().default(null),
    charges: chargesSchema.default(usualCharges),
  }),
  ownRows: z.array(ownRowSchema).max(20).default([]),
});

export type Workshop = z.infer<typeof workshopSchema>;
export type Printer = z.infer<typeof printerSchema>;
export type Press = z.infer<typeof pressSchema>;
export type Sheet = z.infer<typeof sheetSchema>;
export type Packaging = z.infer<typeof packagingSchema>;
export type Channel = z.infer<typeof channelSchema>;

/** @returns whether a text is a language tag (BCP 47) that formatting understands. */
function isLocale(tag: string): boolean {
  try {
    return Intl.getCanonicalLocales(tag).length === 1;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}
