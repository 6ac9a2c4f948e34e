import { idSchema } from '@/shared/schemas/basics';
import { attachmentSchema } from '@/shared/schemas/keptFile';
import { daySchema } from '@/shared/schemas/rate';
import { z } from '@/shared/schemas/z';
import { currencyCodes } from '@/shared/tables/currencies';
import { goodsFaults } from '@/shared/tables/faults';
import { supplyItemSchema } from './supply';

const currencySchema = z.string().refine((code) => currencyCodes.includes(code));
const minorSchema = z.int().min(0).max(1e12);
const noteSchema = z.string().max(500).default('');
const lotSchema = z.string().trim().min(1).max(80).nullable().default(null);

/** What a supplier sent, counted. */
export const goodsInSchema = z.strictObject({
  day: daySchema,
  supplierId: idSchema.nullable().default(null),
  /** The order it answers; null where there was none. */
  supplyOrderId: idSchema.nullable().default(null),
  currency: currencySchema,
  rows: z
    .array(
      z.strictObject({
        item: supplyItemSchema,
        /** As ordered; null of what nobody ordered. */
        ordered: z.number().min(0).max(1e6).nullable(),
        counted: z.number().min(0).max(1e6),
        faulty: z.number().min(0).max(1e6),
        fault: z.enum(goodsFaults).nullable().default(null),
        lot: lotSchema,
        /** What all that were counted cost, without freight; null where the bill is not here yet. */
        amountMinor: minorSchema.nullable(),
      }),
    )
    .min(1)
    .max(500),
  freightMinor: minorSchema.nullable().default(null),
  receipt: attachmentSchema.nullable().default(null),
  note: noteSchema,
});

/** Faulty or missing goods told to their supplier, and what came of it. */
export const faultClaimSchema = z.strictObject({
  goodsInId: idSchema,
  day: daySchema,
  step: z.discriminatedUnion('what', [
    z.strictObject({
      what: z.literal('claimed'),
      rows: z
        .array(z.strictObject({ item: supplyItemSchema, pieces: z.number().min(0).max(1e6) }))
        .min(1)
        .max(500),
      note: noteSchema,
    }),
    z.strictObject({
      what: z.literal('refunded'),
      amountMinor: minorSchema,
      currency: currencySchema,
      note: noteSchema,
    }),
    z.strictObject({ what: z.literal('replaced'), note: noteSchema }),
    z.strictObject({ what: z.literal('refused'), note: noteSchema }),
  ]),
});

export type GoodsIn = z.infer<typeof goodsInSchema>;
export type FaultClaim = z.infer<typeof faultClaimSchema>;
