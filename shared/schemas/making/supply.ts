import { idSchema, nameSchema } from '@/shared/schemas/basics';
import { sizeNameSchema } from '@/shared/schemas/blank';
import { daySchema } from '@/shared/schemas/rate';
import { z } from '@/shared/schemas/z';

/** What is bought: a size of a blank, paper, ink of a channel, a consumable. It lies in stock under the same names. */
export const supplyItemSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('blank'), blankId: idSchema, size: sizeNameSchema }),
  z.strictObject({ kind: z.literal('paper'), sheetId: idSchema }),
  z.strictObject({ kind: z.literal('ink'), printerId: idSchema, name: nameSchema }),
  z.strictObject({ kind: z.literal('consumable'), consumableId: idSchema }),
]);

/** Pieces, sheets (metres of a roll), mL, units of a consumable. */
const supplyQuantitySchema = z.number().min(0).max(1e6);

/** Currency units, as the supplier writes prices. */
const moneySchema = z.number().min(0).max(1e6);

/** What a supplier asks for one thing. */
const offerSchema = z.strictObject({
  id: idSchema,
  item: supplyItemSchema,
  articleNumber: z.string().trim().max(80).default(''),
  /** Sold in multiples of this; 1 where singly. */
  packSize: z.number().positive().max(1e6).default(1),
  /** Price of one from a quantity on, quantities rising; the first from the least that is sold. */
  tiers: z
    .array(z.strictObject({ from: z.number().min(0).max(1e6), each: moneySchema }))
    .min(1)
    .max(12),
  pricedOn: daySchema.nullable().default(null),
  /** Something else that it may stand in for where that is not to be had; null where nothing. */
  standsInFor: supplyItemSchema.nullable().default(null),
});

/** Whoever sells blanks, paper, ink and consumables to the maker. */
export const supplierSchema = z.strictObject({
  name: nameSchema,
  contact: z.string().max(500).default(''),
  /** What the supplier calls the maker. */
  customerNumber: z.string().trim().max(80).default(''),
  /** Working days from order to arrival; null follows the blank. */
  leadWorkingDays: z.int().min(0).max(250).nullable().default(null),
  /** The least an order comes to, without freight. */
  minimumOrder: moneySchema.nullable().default(null),
  /** Of one order; null where nobody has said, 0 where it comes free. */
  freight: moneySchema.nullable().default(null),
  /** An order from this on comes free. */
  freeFreightFrom: moneySchema.nullable().default(null),
  offers: z.array(offerSchema).max(500).default([]),
  note: z.string().max(4000).default(''),
  archivedOn: daySchema.nullable().default(null),
});

/** What consumables are counted in. */
export const consumableUnits = ['piece', 'sheet', 'm', 'roll', 'mL'] as const;

/** What drives the use of a consumable. */
export const consumableDrivers = ['press', 'sheet', 'piece', 'order', 'session'] as const;

/** Tape, protective paper, bags, cards, cartons: what is used up and bought again. */
export const consumableSchema = z.strictObject({
  name: nameSchema,
  unit: z.enum(consumableUnits).default('piece'),
  uses: z
    .array(
      z.strictObject({
        id: idSchema,
        per: z.enum(consumableDrivers),
        amount: z.number().min(0).max(1e5),
        /** Of the presses or packagings named alone; null of all. */
        pressIds: z.array(idSchema).max(20).nullable().default(null),
        packagingIds: z.array(idSchema).max(50).nullable().default(null),
      }),
    )
    .max(10)
    .default([]),
  /** At which it is bought again; null where nobody has said. */
  reorderAt: supplyQuantitySchema.nullable().default(null),
  note: z.string().max(2000).default(''),
});

/** How sure every size is to come out whole: what is expected to be used, three times in four, or nineteen in twenty. */
export const covers = ['expected', 'usual', 'sure'] as const;

/** What is to be bought for some jobs. */
export const buyingListSchema = z.strictObject({
  name: nameSchema,
  works: z
    .array(z.strictObject({ jobId: idSchema, orderId: idSchema.nullable().default(null) }))
    .max(48)
    .default([]),
  cover: z.enum(covers).default('usual'),
  /** The maker's own numbers to buy; what is not named follows the sums. */
  held: z
    .array(z.strictObject({ item: supplyItemSchema, quantity: supplyQuantitySchema }))
    .max(500)
    .default([]),
  /** Offers the maker chose; what is not named is bought where it costs least. */
  chosen: z
    .array(z.strictObject({ item: supplyItemSchema, supplierId: idSchema, offerId: idSchema }))
    .max(500)
    .default([]),
  note: z.string().max(2000).default(''),
  archivedOn: daySchema.nullable().default(null),
});

export type SupplyItem = z.infer<typeof supplyItemSchema>;
export type Supplier = z.infer<typeof supplierSchema>;
export type SupplierOffer = z.infer<typeof offerSchema>;
export type Consumable = z.infer<typeof consumableSchema>;
export type BuyingList = z.infer<typeof buyingListSchema>;
export type Cover = (typeof covers)[number];
