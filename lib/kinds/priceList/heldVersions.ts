import {
  heldDaySchema,
  heldIdSchema,
  heldLengthMmSchema,
  heldNameSchema,
  heldSizeNameSchema,
} from '@/lib/kinds/heldShapes';
import { z } from '@/shared/schemas/z';

const minorSchema = z.int().min(-1e12).max(1e12);
const quantitySchema = z.int().min(1).max(2000);

const rateSchema = z.strictObject({
  place: z.string().max(400),
  label: z.string().max(200),
  value: z.number(),
  unit: z.string().max(40),
  date: heldDaySchema,
});

const breakSchema = z.strictObject({
  from: quantitySchema,
  to: quantitySchema.nullable(),
  each: minorSchema,
  leastAt: quantitySchema,
  leastSize: heldSizeNameSchema,
  leastMargin: z.number(),
});

const itemSchema = z.strictObject({
  id: heldIdSchema,
  jobId: heldIdSchema,
  lineId: heldIdSchema,
  name: heldNameSchema,
  says: z.string().max(1000),
  largestPrint: z.strictObject({ widthMm: heldLengthMmSchema, heightMm: heldLengthMmSchema }).nullable(),
  sizes: z
    .array(z.strictObject({ size: heldSizeNameSchema, upCharge: minorSchema }))
    .min(1)
    .max(30),
  breaks: z.array(breakSchema).min(1).max(12),
  selling: z.enum(['capped', 'setUpApart', 'asListed', 'onePrice', 'slab']),
  capOn: z.enum(['base', 'size']).default('base'),
  setUp: z.strictObject({ start: minorSchema, each: minorSchema }).nullable(),
  charges: z
    .array(
      z.strictObject({
        kind: z.enum([
          'minimumOrder',
          'design',
          'sample',
          'placement',
          'name',
          'fold',
          'split',
          'change',
          'delivery',
        ]),
        name: z.string().max(200),
        amount: minorSchema,
      }),
    )
    .max(40),
  targetMargin: z.number(),
  rates: z.array(rateSchema).max(400),
});

/** Versions as lists of version 2 held them, under a plain number. */
export const heldVersionsSchema = z
  .array(
    z.strictObject({
      number: z.int().min(1).max(1000),
      issuedOn: heldDaySchema,
      validUntil: heldDaySchema,
      currency: z.string().regex(/^[A-Z]{3}$/),
      taxMode: z.enum(['added', 'inside', 'none']),
      title: heldNameSchema,
      from: z.string().max(300),
      notes: z.string().max(1000),
      leadTime: z.string().max(200),
      items: z.array(itemSchema).min(1).max(20),
    }),
  )
  .max(200)
  .default([]);
