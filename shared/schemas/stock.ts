import { currencyCodes } from '@/shared/tables/currencies';
import { idSchema, nameSchema } from './basics';
import { sizeNameSchema } from './blank';
import { z } from './z';

/** What can lie in stock. */
const stockItemSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('blank'),
    blankId: idSchema,
    size: sizeNameSchema,
    /** What the supplier calls the delivery; null where nobody looked. */
    lot: z.string().trim().min(1).max(80).nullable(),
  }),
  z.strictObject({ kind: z.literal('finished'), jobId: idSchema, lineId: idSchema, size: sizeNameSchema }),
  z.strictObject({ kind: z.literal('paper'), sheetId: idSchema }),
  z.strictObject({ kind: z.literal('ink'), printerId: idSchema, name: nameSchema }),
  z.strictObject({ kind: z.literal('consumable'), consumableId: idSchema }),
]);

/** Where it lies. */
const stockPlaceSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('home') }),
  z.strictObject({ kind: z.literal('van') }),
  z.strictObject({ kind: z.literal('shop'), name: nameSchema }),
]);

/** The best, or sold for less. */
export const stockGrades = ['first', 'second'] as const;

const lying = {
  item: stockItemSchema,
  place: stockPlaceSchema,
  grade: z.enum(stockGrades),
} as const;

/** Why something comes or goes. */
const stockCauses = ['bought', 'made', 'used', 'scrapped', 'sold', 'given', 'returned', 'lost'] as const;

/** What some of it cost, whole minor units. */
const unitCostSchema = z.strictObject({
  minor: z.int().min(0).max(1e12),
  currency: z.string().refine((code) => currencyCodes.includes(code)),
  /** What so many cost together; left out it is what one cost. Of a hundred sheets one costs no whole number. */
  per: z.number().positive().max(1e6).exactOptional(),
});

/** Something came or went. */
export const stockMoveSchema = z.strictObject({
  ...lying,
  /** Pieces, sheets, mL or units; less than 0 where they go. */
  quantity: z.number().min(-1e6).max(1e6),
  cause: z.enum(stockCauses),
  /** The document it belongs to, such as a job; null where there is none. */
  reference: z.strictObject({ kind: z.string().min(1).max(40), id: idSchema }).nullable(),
  /** Null where nobody said. */
  unitCost: unitCostSchema.nullable(),
});

/**
 * Something lies elsewhere now, or counts as another grade or size. One entry for both ends, so that nothing can
 * leave without arriving.
 */
export const stockTransferSchema = z.strictObject({
  from: z.strictObject(lying),
  to: z.strictObject(lying),
  quantity: z.number().min(0).max(1e6),
});

/**
 * Somebody counted: whatever the entries before it say, so many were there. A count that names a lot is of that lot
 * alone; one that names none is of all of them.
 */
export const stockCountSchema = z.strictObject({
  ...lying,
  quantity: z.number().min(0).max(1e6),
  /** What was paid for those that the entries before it did not know of, as in a first count; left out it is unknown. */
  unitCost: unitCostSchema.exactOptional(),
});

/** Blanks are noted whole, though paper and ink are not. */
export const blanksNotedSchema = z.int().min(0).max(1e6);

export type StockItem = z.infer<typeof stockItemSchema>;
export type StockPlace = z.infer<typeof stockPlaceSchema>;
export type StockGrade = (typeof stockGrades)[number];
export type StockCause = (typeof stockCauses)[number];
export type StockMove = z.infer<typeof stockMoveSchema>;
export type StockTransfer = z.infer<typeof stockTransferSchema>;
export type StockUnitCost = z.infer<typeof unitCostSchema>;
export type StockCount = z.infer<typeof stockCountSchema>;
