import { idSchema } from '@/shared/schemas/basics';
import { sizeNameSchema } from '@/shared/schemas/blank';
import { daySchema } from '@/shared/schemas/rate';
import { instantSchema } from '@/shared/schemas/stored';
import { z } from '@/shared/schemas/z';
import { currencyCodes } from '@/shared/tables/currencies';
import { gapCauses, goodsFaults, pressFaults, sheetFaults } from '@/shared/tables/faults';

const currencySchema = z.string().refine((code) => currencyCodes.includes(code));
const minorSchema = z.int().min(0).max(1e12);
const piecesSchema = z.int().min(0).max(100_000);
const noteSchema = z.string().max(500).default('');
const lotSchema = z.string().trim().min(1).max(80).nullable().default(null);

const ofRun = {
  runId: idSchema,
  /** The standard it began by; null where it was begun without one. */
  standardId: idSchema.nullable().default(null),
} as const;

/** One piece lifted from the press. */
export const pressingSchema = z.strictObject({
  ...ofRun,
  jobId: idSchema,
  lineId: idSchema,
  placementId: idSchema,
  size: sizeNameSchema,
  /** A second is sold for less; scrap is lost. */
  result: z.enum(['good', 'second', 'scrap']),
  /** Null of a good one, and where nobody has said yet. */
  fault: z.enum(pressFaults).nullable().default(null),
  /** When it was lifted, where its cause was named later; left out where it was noted as it was lifted. */
  pressedAt: instantSchema.exactOptional(),
});

/** Blanks found faulty before they were pressed. */
export const blankFaultSchema = z.strictObject({
  runId: idSchema.nullable().default(null),
  blankId: idSchema,
  size: sizeNameSchema,
  lot: lotSchema,
  pieces: piecesSchema,
  fault: z.enum(goodsFaults).nullable().default(null),
});

/** Sheets that came out of the printer. */
export const sheetsPrintedSchema = z.strictObject({
  ...ofRun,
  jobId: idSchema,
  /** Null of sheets that several share. */
  placementId: idSchema.nullable().default(null),
  good: piecesSchema,
  rejected: piecesSchema,
  fault: z.enum(sheetFaults).nullable().default(null),
});

/** Lines of a run's costs that differ from their standard each for its own reason. */
const gapLines = [
  /** More or fewer good pieces than planned, at the standard of each. */
  'output',
  'revenue',
  'blanksPrice',
  'blanksUsage',
  'paperPrice',
  'paperUsage',
  'inkUsage',
  'labour',
  'overhead',
  'freight',
  'otherCost',
  'fees',
  'reprints',
] as const;

/** Blanks used in all, and what so many cost; amount null where the price is as planned. */
export const blanksUsedSchema = z.strictObject({
  of: z.literal('blanks'),
  quantity: piecesSchema,
  amountMinor: minorSchema.nullable(),
});

export const sheetsUsedSchema = z.strictObject({
  of: z.literal('sheets'),
  quantity: z.number().min(0).max(1e6),
  amountMinor: minorSchema.nullable(),
});

export const inkUsedSchema = z.strictObject({ of: z.literal('ink'), mL: z.number().min(0).max(1e6) });

export const runAmountSchema = z.strictObject({
  of: z.enum(['freight', 'otherCost', 'fees', 'reprints', 'revenue']),
  amountMinor: minorSchema,
});

/** What was used, and what it cost. What nobody notes is taken as the standard has it, and said to be. */
const actualSchema = z.discriminatedUnion('of', [
  blanksUsedSchema,
  sheetsUsedSchema,
  inkUsedSchema,
  runAmountSchema,
]);

export const runActualSchema = z.strictObject({
  runId: idSchema,
  day: daySchema,
  currency: currencySchema,
  actual: actualSchema,
});

/** What happened to a run beside its pieces. */
export const runStepSchema = z.strictObject({
  ...ofRun,
  day: daySchema,
  step: z.discriminatedUnion('what', [
    z.strictObject({ what: z.literal('begun') }),
    /** The press was heated up: what a strip or probe read, °C, and the room. */
    z.strictObject({
      what: z.literal('heated'),
      pressId: idSchema,
      measuredC: z.number().min(0).max(500).nullable().default(null),
      roomC: z.number().min(-40).max(60).nullable().default(null),
      humidity: z.number().min(0).max(1).nullable().default(null),
    }),
    z.strictObject({
      what: z.literal('firstOff'),
      placementId: idSchema,
      by: z.string().trim().min(1).max(120),
    }),
    z.strictObject({ what: z.literal('stopped'), fault: z.enum(pressFaults).nullable(), note: noteSchema }),
    z.strictObject({ what: z.literal('goneOn'), note: noteSchema }),
    z.strictObject({
      what: z.literal('cause'),
      line: z.enum(gapLines),
      cause: z.enum(gapCauses),
      note: noteSchema,
    }),
    /**
     * The mirror of a job was looked at after prints came out reversed: these, by the entries that say so. A count would
     * answer for a later one where one of them was undone or named otherwise.
     */
    z.strictObject({
      what: z.literal('mirrorChecked'),
      jobId: idSchema,
      pressingIds: z.array(idSchema).min(1).max(100_000),
    }),
    z.strictObject({ what: z.literal('closed'), note: noteSchema }),
    z.strictObject({ what: z.literal('reopened') }),
  ]),
});

/** Work whose minutes are told apart. */
export const workElements = [
  'enquiry',
  'art',
  'proof',
  'setUp',
  'sheets',
  'presses',
  'finish',
  'pack',
  'cleanDown',
  'deliver',
  'buying',
  'selling',
  'office',
  'other',
  /** Of a run: all the rest of its time, which nobody told apart. */
  'rest',
] as const;

/** Time worked. */
export const hoursSchema = z.strictObject({
  day: daySchema,
  /** More than a whole day in one entry is a slip. */
  minutes: z.number().min(0).max(1440),
  for: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.enum(['run', 'order', 'stallDay']), id: idSchema }),
    z.strictObject({ kind: z.literal('workshop') }),
  ]),
  element: z.enum(workElements),
  /** Of presses: which; null elsewhere. */
  placementId: idSchema.nullable().default(null),
  /** How many sheets, presses or pieces it was for; null where nobody counted. */
  pieces: piecesSchema.nullable().default(null),
  from: z.enum(['clock', 'typed']),
  note: noteSchema,
});

export type Pressing = z.infer<typeof pressingSchema>;
export type BlankFault = z.infer<typeof blankFaultSchema>;
export type SheetsPrinted = z.infer<typeof sheetsPrintedSchema>;
export type RunActual = z.infer<typeof runActualSchema>;
export type RunStep = z.infer<typeof runStepSchema>;
export type Hours = z.infer<typeof hoursSchema>;
export type GapLine = (typeof gapLines)[number];
export type WorkElement = (typeof workElements)[number];
