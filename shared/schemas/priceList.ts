import { currencyCodes } from '@/shared/tables/currencies';
import { idSchema, lengthMmSchema, nameSchema } from './basics';
import { sizeNameSchema } from './blank';
import { paperNumberSchema } from './happened';
import { daySchema } from './rate';
import { sellingRuleSchema } from './sellingRule';
import { z } from './z';

/** Money of a paper that went out: whole minor units, which nothing rounds again. */
const minorSchema = z.int().min(-1e12).max(1e12);
const quantitySchema = z.int().min(1).max(2000);

/** The charges around a piece that a list can name. */
export const listedCharges = [
  'minimumOrder',
  'design',
  'sample',
  'placement',
  'name',
  'fold',
  'split',
  'change',
  'delivery',
] as const;

/** What a list offers of a job; its prices are frozen when the list is issued. */
export const listItemSchema = z.strictObject({
  id: idSchema,
  jobId: idSchema,
  lineId: idSchema,
  /** Charges around the piece that are listed with it. */
  charges: z.array(z.enum(listedCharges)).max(listedCharges.length).default(['minimumOrder', 'name']),
  /** The maker's own amounts of such charges, as written, currency units; one without is suggested. */
  ownAmounts: z
    .array(z.strictObject({ kind: z.enum(listedCharges), amount: z.number().min(0).max(1e6) }))
    .max(listedCharges.length)
    .default([]),
});

/** A rate as it stood when a list was issued. */
const frozenRateSchema = z.strictObject({
  /** The field it is kept in: document, id and path. */
  place: z.string().max(400),
  label: z.string().max(200),
  value: z.number(),
  unit: z.string().max(40),
  date: daySchema,
});

/** The price of a piece from so many on, for the sizes that carry no charge. */
const frozenBreakSchema = z.strictObject({
  from: quantitySchema,
  /** Last quantity; null for the open break. */
  to: quantitySchema.nullable(),
  each: minorSchema,
  /** The quantity and size inside that earn least, and the margin there; for the owner alone. */
  leastAt: quantitySchema,
  leastSize: sizeNameSchema,
  leastMargin: z.number(),
});

const frozenItemSchema = z.strictObject({
  id: idSchema,
  jobId: idSchema,
  lineId: idSchema,
  name: nameSchema,
  /** Blank, its colour, and what is printed where, as it is told to a customer. */
  says: z.string().max(1000),
  largestPrint: z.strictObject({ widthMm: lengthMmSchema, heightMm: lengthMmSchema }).nullable(),
  /** In the order of the blank, each with what it adds; those of one charge stand together on paper. */
  sizes: z
    .array(z.strictObject({ size: sizeNameSchema, upCharge: minorSchema }))
    .min(1)
    .max(30),
  breaks: z.array(frozenBreakSchema).min(1).max(12),
  /** How the breaks are reckoned. */
  selling: sellingRuleSchema,
  /** What the cap acts on: the price of the sizes without a charge, or, as lists did before, that of each size. */
  capOn: z.enum(['base', 'size']).default('base'),
  /** So much to start and so much a piece, where the rule is that. */
  setUp: z.strictObject({ start: minorSchema, each: minorSchema }).nullable(),
  charges: z
    .array(z.strictObject({ kind: z.enum(listedCharges), name: z.string().max(200), amount: minorSchema }))
    .max(40),
  /** The margin that prices were made for that day. */
  targetMargin: z.number(),
  rates: z.array(frozenRateSchema).max(400),
});

/** A version of a price list as it went out. */
export const priceListVersionSchema = z.strictObject({
  number: paperNumberSchema,
  issuedOn: daySchema,
  validUntil: daySchema,
  currency: z.string().refine((code) => currencyCodes.includes(code), {
    error: 'is not a currency code of ISO 4217 with a minor unit',
  }),
  taxMode: z.enum(['added', 'inside', 'none']),
  /** As they stood on the paper. */
  title: nameSchema,
  from: z.string().max(300),
  notes: z.string().max(1000),
  leadTime: z.string().max(200),
  items: z.array(frozenItemSchema).min(1).max(20),
});

/** A price list: what the next version offers. Versions that went out are papers of their own. */
export const priceListSchema = z.strictObject({
  name: nameSchema,
  /** Whose list it is, and how to reach them. */
  from: z.string().max(300).default(''),
  /** What is included and agreed, in the maker's words. */
  notes: z.string().max(1000).default(''),
  leadTime: z.string().max(200).default(''),
  validDays: z.int().min(1).max(730).default(90),
  paper: z.enum(['a4', 'letter']).default('a4'),
  items: z.array(listItemSchema).max(20).default([]),
});

export type PriceList = z.infer<typeof priceListSchema>;
export type PriceListItem = z.infer<typeof listItemSchema>;
export type PriceListVersion = z.infer<typeof priceListVersionSchema>;
export type ListedCharge = (typeof listedCharges)[number];
export type FrozenItem = z.infer<typeof frozenItemSchema>;
export type FrozenRate = z.infer<typeof frozenRateSchema>;
