import { idSchema, nameSchema } from './basics';
import { paperNumberSchema } from './happened';
import { paymentWays } from './orderEvents';
import {
  alternativeOnPaperSchema,
  datesSchema,
  goodsSchema,
  goodsSoldSchema,
  heading,
  minorSchema,
  ownersSideSchema,
  pricedSizeSchema,
  sale,
  sumsSchema,
  taxOnPaperSchema,
  termSchema,
} from './paperParts';
import { daySchema } from './rate';
import { z } from './z';

export const quoteSchema = z.strictObject({
  ...heading,
  ...sale,
  validUntil: daySchema,
  wantedOn: daySchema.nullable(),
  depositShare: z.number().min(0).max(1),
  deposit: minorSchema,
  balance: minorSchema,
  dates: datesSchema,
  revisionsIncluded: z.int().min(0).max(20),
  terms: z.array(termSchema).max(30),
  alternatives: z.array(alternativeOnPaperSchema).max(2),
  owner: ownersSideSchema,
});

export const confirmationSchema = z.strictObject({
  ...heading,
  ...sale,
  deposit: minorSchema,
  balance: minorSchema,
  dates: datesSchema,
  terms: z.array(termSchema).max(30),
  accepted: z.strictObject({ by: z.string().max(120), on: daySchema, choice: z.string().max(120) }),
  /** The version of the quote it confirms. */
  quote: z.strictObject({ paperId: idSchema, number: paperNumberSchema }),
});

/** Asks for the deposit or the balance. */
export const paymentRequestSchema = z.strictObject({
  ...heading,
  what: z.enum(['deposit', 'balance']),
  amount: minorSchema,
  total: minorSchema,
  paid: minorSchema,
  dueOn: daySchema.nullable(),
});

export const invoiceSchema = z.strictObject({
  ...heading,
  ...sale,
  /** None where it bills changes alone, beside an invoice of the goods. */
  goods: goodsSoldSchema,
  /** The entries of the changes that it bills: a device that has not heard of one bills without it. */
  changeIds: z.array(idSchema).max(100),
  suppliedOn: daySchema.nullable(),
  paid: minorSchema,
  due: minorSchema,
  dueOn: daySchema.nullable(),
  terms: z.array(termSchema).max(30),
});

export const receiptSchema = z.strictObject({
  ...heading,
  payment: z.strictObject({
    entryId: idSchema,
    day: daySchema,
    amount: minorSchema,
    way: z.enum(paymentWays),
  }),
  total: minorSchema,
  paid: minorSchema,
  left: minorSchema,
});

export const creditNoteSchema = z.strictObject({
  ...heading,
  /** What it corrects. */
  invoice: z.strictObject({ paperId: idSchema, number: paperNumberSchema, issuedOn: daySchema }),
  why: z.string().trim().min(1).max(500),
  lines: z
    .array(z.strictObject({ what: nameSchema, amount: minorSchema }))
    .min(1)
    .max(100),
  tax: taxOnPaperSchema,
  sums: sumsSchema,
});

export const proofSchema = z.strictObject({
  ...heading,
  goods: z
    .array(
      goodsSchema.extend({ sizes: z.array(pricedSizeSchema.pick({ size: true, quantity: true })).max(60) }),
    )
    .min(1)
    .max(48),
  /** To be printed on the pieces, as given. */
  names: z.array(z.string().max(200)).max(2000),
  revisionsIncluded: z.int().min(0).max(20),
  revisionsUsed: z.int().min(0).max(1000),
  answerBy: daySchema.nullable(),
});

export const deliveryNoteSchema = z.strictObject({
  ...heading,
  way: z.enum(['fetched', 'brought', 'sent']).nullable(),
  goods: z
    .array(
      z.strictObject({
        name: nameSchema,
        says: z.string().max(1000),
        sizes: z.array(pricedSizeSchema.pick({ size: true, quantity: true })).max(60),
      }),
    )
    .min(1)
    .max(48),
  people: z
    .array(
      z.strictObject({
        name: z.string().max(160),
        number: z.string().max(30),
        size: z.string().max(30),
        goods: nameSchema,
      }),
    )
    .max(2000),
});

export type Quote = z.infer<typeof quoteSchema>;
export type Confirmation = z.infer<typeof confirmationSchema>;
export type PaymentRequest = z.infer<typeof paymentRequestSchema>;
export type Invoice = z.infer<typeof invoiceSchema>;
export type Receipt = z.infer<typeof receiptSchema>;
export type CreditNote = z.infer<typeof creditNoteSchema>;
export type Proof = z.infer<typeof proofSchema>;
export type DeliveryNote = z.infer<typeof deliveryNoteSchema>;
