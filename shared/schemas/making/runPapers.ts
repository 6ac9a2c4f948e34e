import { idSchema, nameSchema } from '@/shared/schemas/basics';
import { positions, sizeNameSchema } from '@/shared/schemas/blank';
import { deviceLetterSchema, paperNumberSchema, sha256Schema } from '@/shared/schemas/happened';
import { recipeSchema } from '@/shared/schemas/job';
import { daySchema } from '@/shared/schemas/rate';
import { z } from '@/shared/schemas/z';
import { findingIds } from '@/shared/tables/findingIds';
import { covers, supplyItemSchema } from './supply';

const currencySchema = z.string().regex(/^[A-Z]{3}$/);
/** Currency units, unrounded as the sums make them. */
const amountSchema = z.number().min(-1e12).max(1e12);
const countSchema = z.number().min(0).max(1e9);
const piecesSchema = z.int().min(0).max(100_000);
const shareSchema = z.number().min(0).max(1);
const minutesSchema = z.number().min(0).max(1e6);

/** One part of the work on the clock, in order. */
const clockPartSchema = z.strictObject({
  what: z.enum([
    'print',
    'dry',
    'setUp',
    'test',
    'press',
    'break',
    'finish',
    'cool',
    'pack',
    'cleanDown',
    'deliver',
  ]),
  /** The print that is pressed, or what is meant; empty where the word says it. */
  name: z.string().max(200),
  /** Of which heating-up, from 0; null outside. */
  session: z.int().min(0).max(1000).nullable(),
  day: daySchema,
  /** Minutes after midnight of that day by the wall clock; it may run past the next midnight. */
  fromMinute: z.number().min(0).max(4320),
  minutes: minutesSchema,
  /** Which print of which line is pressed or tested, for names repeat; left out of all other work. */
  turn: z.strictObject({ jobId: idSchema, lineId: idSchema, placementId: idSchema }).exactOptional(),
});

const standardSizeSchema = z.strictObject({
  size: sizeNameSchema,
  wanted: piecesSchema,
  /** Blanks laid out, spares among them. */
  take: piecesSchema,
  /** That a blank of it ends good. */
  chance: shareSchema,
  /** Of one blank, currency units. */
  price: amountSchema,
  /** Blanks expected to be drawn for one good piece. */
  blanksEach: countSchema,
  /** Of one good piece with everything: what a size adds to the standard where more or fewer came out. */
  revenueEach: amountSchema.nullable(),
  /** What one good piece of it takes, rejects and spoiled ones in it, and nothing that is spent once. */
  takes: z.strictObject({
    sheets: countSchema,
    mL: countSchema,
    /** Rest in them. */
    finishMinutes: minutesSchema,
    /** Of `otherCost`. */
    otherCost: amountSchema,
    /** Held for reprints of it. */
    reprints: amountSchema,
    /** What of it was bought: blank, paper, ink, supplies, packaging and power; no own pay, wear or overhead. */
    boughtIn: amountSchema,
  }),
});

const standardPlacementSchema = z.strictObject({
  placementId: idSchema,
  name: nameSchema,
  position: z.enum(positions),
  artworkId: idSchema,
  artworkVersion: z.int().min(1),
  pressId: idSchema,
  pressName: nameSchema,
  recipe: recipeSchema,
  mirror: z.boolean(),
  dropFromCollarMm: z.number().nullable(),
  prints: z
    .array(
      z.strictObject({ sizes: z.array(sizeNameSchema).max(30), widthMm: z.number(), heightMm: z.number() }),
    )
    .max(30),
  testPresses: piecesSchema,
  /** Share of presses that spoil the piece, as the standard has it. */
  scrap: shareSchema,
  /** Pieces expected to go into this press. */
  entering: countSchema,
  /** The hands' minutes and those the press works alone, of one press. */
  handMinutes: minutesSchema,
  aloneMinutes: minutesSchema,
});

/** One job of a run as it stood when the run began. */
const standardWorkSchema = z.strictObject({
  jobId: idSchema,
  orderId: idSchema.nullable(),
  stallDayId: idSchema.nullable(),
  name: nameSchema,
  /** Of the canonical text of everything it was reckoned from, so that a job changed since is seen. */
  sha256: sha256Schema,
  lines: z
    .array(
      z.strictObject({
        lineId: idSchema,
        name: nameSchema,
        blankId: idSchema,
        blankName: nameSchema,
        isBrought: z.boolean(),
        sizes: z.array(standardSizeSchema).max(30),
        placements: z.array(standardPlacementSchema).max(4),
      }),
    )
    .max(12),
  sheets: z.strictObject({
    sheetId: idSchema,
    name: nameSchema,
    /** Expected in all: tests and rejects in them. */
    quantity: countSchema,
    tests: countSchema,
    price: amountSchema,
    /** Of a roll: metres of it that count for one sheet; left out of cut paper. */
    metresEach: z.number().positive().max(1000).exactOptional(),
  }),
  ink: z.strictObject({ mL: countSchema, sessionMl: countSchema, pricePerMl: amountSchema }),
  labour: z.strictObject({
    minutes: minutesSchema,
    wagePerHour: amountSchema,
    /** Minutes by element of work; they add to all. */
    elements: z.array(z.strictObject({ element: z.string().max(60), minutes: minutesSchema })).max(60),
  }),
  overheadPerHour: amountSchema,
  /** Held for reprints; a run without any keeps it. */
  reprints: amountSchema,
  /** Freight of the blanks; packaging, delivery, power, wear and all else that the bridge does not split. */
  freight: amountSchema,
  otherCost: amountSchema,
  fullCost: amountSchema,
  /** Where no price was asked, those of the price that the sums suggest. */
  fees: amountSchema,
  /** Without tax; null where no price was asked. */
  revenue: amountSchema.nullable(),
  /** Fees as a share of the price; the rest of them is the same at any. */
  feeShare: shareSchema,
  /** Stops passed with a reason; printed on the run sheet. */
  overrides: z.array(z.strictObject({ finding: z.enum(findingIds), reason: z.string().max(500) })).max(50),
});

/** What a run is held against: frozen when it begins. */
export const runStandardSchema = z.strictObject({
  number: paperNumberSchema,
  issuedOn: daySchema,
  runId: idSchema,
  title: nameSchema,
  currency: currencySchema,
  cover: z.enum(covers),
  works: z.array(standardWorkSchema).min(1).max(24),
  /** Sizes in the order in which they are pressed. */
  sizes: z.array(z.strictObject({ jobId: idSchema, lineId: idSchema, size: sizeNameSchema })).max(1000),
  clock: z.array(clockPartSchema).max(2000),
});

/** What is asked of a supplier. It bears no price the supplier did not tell, and nothing of what it is for. */
export const supplyOrderSchema = z.strictObject({
  /** 26-003A: the third of 2026 on the device A. */
  number: z.strictObject({
    year: z.int().min(2000).max(9999),
    count: z.int().min(1).max(1e6),
    letter: deviceLetterSchema,
  }),
  issuedOn: daySchema,
  supplierId: idSchema.nullable(),
  supplier: z.strictObject({
    name: nameSchema,
    contact: z.string().max(500),
    customerNumber: z.string().max(80),
  }),
  from: z.strictObject({
    name: z.string().max(200),
    address: z.string().max(1000),
    contact: z.string().max(500),
  }),
  language: z.string().max(40),
  locale: z.string().max(40),
  page: z.enum(['a4', 'letter']),
  currency: currencySchema,
  wantedBy: daySchema.nullable(),
  rows: z
    .array(
      z.strictObject({
        item: supplyItemSchema,
        name: z.string().max(300),
        articleNumber: z.string().max(80),
        size: z.string().max(24),
        unit: z.string().max(40),
        quantity: countSchema,
        packs: countSchema.nullable(),
        packSize: countSchema,
        /** Currency units; null where no price is known. */
        each: amountSchema.nullable(),
        amountMinor: z.int().min(0).max(1e12).nullable(),
      }),
    )
    .min(1)
    .max(500),
  goodsMinor: z.int().min(0).max(1e12).nullable(),
  freightMinor: z.int().min(0).max(1e12).nullable(),
  totalMinor: z.int().min(0).max(1e12).nullable(),
  note: z.string().max(2000),
  /** The buying list it was made from, for the maker alone. */
  buyingListId: idSchema.nullable(),
});

export type RunStandard = z.infer<typeof runStandardSchema>;
export type StandardWork = RunStandard['works'][number];
export type StandardPlacement = z.infer<typeof standardPlacementSchema>;
export type ClockPart = z.infer<typeof clockPartSchema>;
export type SupplyOrder = z.infer<typeof supplyOrderSchema>;
