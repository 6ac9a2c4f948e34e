import { idSchema } from './basics';
import { deviceLetterSchema } from './happened';
import { attachmentSchema } from './keptFile';
import { daySchema } from './rate';
import { z } from './z';

/** 26-014A: the fourteenth of 2026 on the device A. */
export const orderNumberSchema = z.strictObject({
  year: z.int().min(2000).max(9999),
  count: z.int().min(1).max(1e6),
  letter: deviceLetterSchema,
});

/** Where an answer came from. */
const answerWays = ['inPerson', 'phone', 'message', 'signedPaper', 'link'] as const;

/** Steps an order may take before its gate is open, where the maker gives a reason. */
const orderGates = ['acceptance', 'deposit', 'approval', 'balance'] as const;

const lossReasons = ['price', 'date', 'noAnswer', 'rights', 'other'] as const;

/** Why something was made again. */
const reprintCauses = ['ourFault', 'blankFault', 'approvedError', 'carrier', 'other'] as const;
const reprintPayers = ['workshop', 'supplier', 'customer', 'carrier'] as const;

const answered = {
  /** Who said so. */
  by: z.string().trim().min(1).max(120),
  how: z.enum(answerWays),
  proof: attachmentSchema.nullable().default(null),
} as const;

const plain = <const What extends string>(what: What) =>
  z.strictObject({ what: z.literal(what), note: z.string().max(500).default('') });

/** A version of an artwork. */
const artworkVersionSchema = z.strictObject({ artworkId: idSchema, version: z.int().min(1).max(10_000) });

const ofVersions = <const What extends string>(what: What) =>
  z.strictObject({
    what: z.literal(what),
    note: z.string().max(500).default(''),
    /** The pictures of that day, so that a later version of one changes nothing about it; left out where there are none. */
    versions: z.array(artworkVersionSchema).max(48).exactOptional(),
  });

/** What happened to an order. */
const orderStepSchema = z.discriminatedUnion('what', [
  z.strictObject({ what: z.literal('enquired'), number: orderNumberSchema }),
  z.strictObject({ what: z.literal('quoted'), paperId: idSchema }),
  z.strictObject({
    what: z.literal('accepted'),
    /** The version of the quote. */
    paperId: idSchema,
    /** One of its alternatives; null for what was asked. */
    alternativeId: idSchema.nullable().default(null),
    ...answered,
  }),
  z.strictObject({
    what: z.literal('approved'),
    /** The proof sheet; null where the pictures were shown otherwise. */
    paperId: idSchema.nullable(),
    /** The version of each artwork that was approved. */
    versions: z.array(artworkVersionSchema).max(48),
    ...answered,
  }),
  /** The customer wanted the proof changed: one round of those included. */
  z.strictObject({ what: z.literal('revised'), wish: z.string().trim().min(1).max(500) }),
  ofVersions('blanksOrdered'),
  ofVersions('goodsIn'),
  ofVersions('scheduled'),
  ofVersions('printed'),
  ofVersions('pressed'),
  ofVersions('checked'),
  ofVersions('packed'),
  ofVersions('delivered'),
  /** What it took is entered. */
  ofVersions('closed'),
  plain('held'),
  plain('resumed'),
  plain('cancelled'),
  plain('reopened'),
  z.strictObject({
    what: z.literal('lost'),
    why: z.enum(lossReasons),
    note: z.string().max(500).default(''),
  }),
  z.strictObject({
    what: z.literal('override'),
    gate: z.enum(orderGates),
    reason: z.string().trim().min(3).max(500),
    /** The pictures that are gone on with unapproved: another version of one waits for its own yes. */
    versions: z.array(artworkVersionSchema).max(48).exactOptional(),
  }),
  /** Something else is wanted after the approval. */
  z.strictObject({
    what: z.literal('change'),
    wish: z.string().trim().min(1).max(500),
    /** Charged for it, whole minor units as prices are written. */
    amountMinor: z.int().min(0).max(1e12),
    currency: z.string().regex(/^[A-Z]{3}$/),
  }),
  z.strictObject({
    what: z.literal('reprint'),
    cause: z.enum(reprintCauses),
    payer: z.enum(reprintPayers),
    pieces: z.int().min(1).max(100_000),
    note: z.string().max(500).default(''),
  }),
  /** The customer was asked for something again. */
  z.strictObject({ what: z.literal('reminded'), of: z.enum(['answer', 'approval', 'deposit', 'balance']) }),
]);

export const orderEventSchema = z.strictObject({
  orderId: idSchema,
  /** When it happened, by the maker's calendar; it may be noted later. */
  day: daySchema,
  step: orderStepSchema,
});

export const paymentWays = ['transfer', 'card', 'cash', 'cheque', 'other'] as const;

/** Money that came for an order, or went back. */
export const paymentSchema = z.strictObject({
  orderId: idSchema,
  day: daySchema,
  /** A refund gives money back; a reversal says that money which came was taken back by the bank. */
  kind: z.enum(['payment', 'refund', 'reversal']),
  /** Whole minor units, above 0 whichever way it goes. */
  amountMinor: z.int().min(1).max(1e12),
  currency: z.string().regex(/^[A-Z]{3}$/),
  way: z.enum(paymentWays),
  /** Kept back by whoever passed it on, as far as that is known. */
  feeMinor: z.int().min(0).max(1e12).default(0),
  note: z.string().max(500).default(''),
});

/** A payment reached the bank: noted later than the payment, which stays as it is. */
export const payoutSchema = z.strictObject({
  orderId: idSchema,
  paymentId: idSchema,
  day: daySchema,
  reference: z.string().max(120).default(''),
  /** Kept back in all, in the currency of the payment: it takes the place of what the payment said. */
  feeMinor: z.int().min(0).max(1e12),
});

const expenseKinds = [
  'blanks',
  'freight',
  'paper',
  'ink',
  'packaging',
  'delivery',
  'machine',
  'upkeep',
  'power',
  'rent',
  'insurance',
  'fees',
  'stall',
  'office',
  'advertising',
  'other',
] as const;

/** Money spent, for an order or for the workshop. */
export const expenseSchema = z.strictObject({
  /** Null where it is of no single order. */
  orderId: idSchema.nullable(),
  day: daySchema,
  what: z.string().trim().min(1).max(200),
  kind: z.enum(expenseKinds),
  amountMinor: z.int().min(0).max(1e12),
  currency: z.string().regex(/^[A-Z]{3}$/),
  receipt: attachmentSchema.nullable().default(null),
});

export type OrderNumber = z.infer<typeof orderNumberSchema>;
export type OrderEvent = z.infer<typeof orderEventSchema>;
export type OrderStep = z.infer<typeof orderStepSchema>;
export type OrderGate = (typeof orderGates)[number];
export type LossReason = (typeof lossReasons)[number];
export type Payment = z.infer<typeof paymentSchema>;
export type Payout = z.infer<typeof payoutSchema>;
export type PaymentWay = (typeof paymentWays)[number];
export type Expense = z.infer<typeof expenseSchema>;
