import { idSchema, nameSchema } from './basics';
import { sizeNameSchema } from './blank';
import { languageSchema } from './customer';
import { attachmentSchema } from './keptFile';
import { listedCharges } from './priceList';
import { daySchema } from './rate';
import { z } from './z';

/** Currency units, written as the way of selling writes prices: with tax inside, or to be added. */
const moneySchema = z.number().min(-1e6).max(1e6);

/** Something that is still missing. */
const openItemSchema = z.strictObject({
  id: idSchema,
  what: z.string().trim().min(1).max(200),
  /** Of whom it is awaited. */
  ofWhom: z.enum(['customer', 'maker', 'supplier']),
  doneBy: daySchema.nullable().default(null),
  doneOn: daySchema.nullable().default(null),
});

/** One person who gets a piece. What nobody told is empty, never made up. */
export const nameRowSchema = z.strictObject({
  id: idSchema,
  /** With its number no longer than a line of names on a proof sheet. */
  name: z.string().max(160),
  size: z.string().max(30),
  /** Printed or written with the name. */
  number: z.string().max(30).default(''),
});

/** What of a job's line belongs to the order alone. Its quantities, prints and asked price stand in the job. */
export const orderLineSchema = z.strictObject({
  jobId: idSchema,
  lineId: idSchema,
  /** Where its price comes from: as the job asks it, or a version of a price list. */
  price: z
    .discriminatedUnion('from', [
      z.strictObject({ from: z.literal('job') }),
      z.strictObject({ from: z.literal('list'), paperId: idSchema, itemId: idSchema }),
    ])
    .default({ from: 'job' }),
  names: z.array(nameRowSchema).max(2000).default([]),
  /** Somebody looked at a job that is as it began, and found it right; left out where nobody did. */
  rightAsBegun: z.literal(true).exactOptional(),
});

/** Something charged beside the pieces. */
const orderChargeSchema = z.strictObject({
  id: idSchema,
  kind: z.enum([...listedCharges, 'rush', 'own']),
  what: nameSchema,
  amount: moneySchema,
});

/** Taken off the subtotal before tax. */
const discountSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('share'), share: z.number().min(0).max(1), why: z.string().max(200) }),
  z.strictObject({ kind: z.literal('amount'), amount: z.number().min(0).max(1e6), why: z.string().max(200) }),
]);

/** Another choice beside what was asked for. */
const alternativeSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    id: idSchema,
    kind: z.literal('pieces'),
    jobId: idSchema,
    lineId: idSchema,
    /** More or fewer of a line in all; fewer are split over its sizes. */
    quantity: z.int().min(1).max(100_000),
    /** The size that further pieces are of; null spreads them as the asked ones. */
    size: sizeNameSchema.nullable().default(null),
  }),
  z.strictObject({
    id: idSchema,
    kind: z.literal('without'),
    jobId: idSchema,
    lineId: idSchema,
    placementId: idSchema,
    /** The maker's own price of a piece; null where it is worked out. */
    each: z.number().positive().max(1e9).nullable().default(null),
  }),
]);

/** How the goods get to the customer. */
const deliveryWays = ['fetched', 'brought', 'sent'] as const;

/** What a customer wants made: an enquiry first, an order once it was accepted. */
export const orderSchema = z.strictObject({
  name: nameSchema,
  customerId: idSchema.nullable().default(null),
  /** Whom to write to; null for the customer's first. */
  personId: idSchema.nullable().default(null),
  /** Where they heard of the workshop. */
  heardFrom: z.string().max(120).default(''),
  /** What they asked for, as they said it. */
  asked: z.string().max(2000).default(''),
  /** How many, as they said it; null where nobody said. */
  askedPieces: z.int().min(1).max(100_000).nullable().default(null),
  wantedOn: daySchema.nullable().default(null),
  openItems: z.array(openItemSchema).max(50).default([]),
  /** What is made for it. */
  jobIds: z.array(idSchema).max(12).default([]),
  lines: z.array(orderLineSchema).max(48).default([]),
  /** Decides tax and fees; null follows the first job. */
  channelId: idSchema.nullable().default(null),
  charges: z.array(orderChargeSchema).max(30).default([]),
  discount: discountSchema.nullable().default(null),
  /** No tax is taken, on the proof the customer gave. */
  exempt: z.boolean().default(false),
  /** Null follows the workshop in all of these. */
  depositShare: z.number().min(0).max(1).nullable().default(null),
  validDays: z.int().min(1).max(365).nullable().default(null),
  revisionsIncluded: z.int().min(0).max(20).nullable().default(null),
  /** Working days from the later of approval and deposit; null where they are worked out. */
  leadDays: z.int().min(1).max(250).nullable().default(null),
  language: languageSchema.nullable().default(null),
  delivery: z
    .strictObject({
      way: z.enum(deliveryWays).nullable().default(null),
      /** Of the customer; null for the first that takes goods. */
      addressId: idSchema.nullable().default(null),
      /** Packed for each person apart. */
      byPerson: z.boolean().default(false),
    })
    .default({ way: null, addressId: null, byPerson: false }),
  /** Agreed beside the terms of the workshop. */
  agreed: z.string().max(2000).default(''),
  alternatives: z.array(alternativeSchema).max(2).default([]),
  /** Why it is offered under what it costs in full; empty where it is not. */
  underCostWhy: z.string().max(500).default(''),
  /** The order it repeats; null for a first one. */
  repeats: idSchema.nullable().default(null),
  attachments: z.array(attachmentSchema).max(100).default([]),
  note: z.string().max(4000).default(''),
  /** The day it was put away; null while it is on the board. */
  archivedOn: daySchema.nullable().default(null),
});

export type Order = z.infer<typeof orderSchema>;
export type OrderLine = z.infer<typeof orderLineSchema>;
export type OrderCharge = z.infer<typeof orderChargeSchema>;
export type OpenItem = z.infer<typeof openItemSchema>;
export type NameRow = z.infer<typeof nameRowSchema>;
export type Discount = z.infer<typeof discountSchema>;
export type Alternative = z.infer<typeof alternativeSchema>;
export type DeliveryWay = (typeof deliveryWays)[number];
