import { idSchema, nameSchema } from './basics';
import { attachmentSchema } from './keptFile';
import { daySchema } from './rate';
import { z } from './z';

/** A shop that sells goods on consignment: they stay the maker's until they are sold. */
export const shopSchema = z.strictObject({
  /** Also the name of the place at which its goods lie. */
  name: nameSchema,
  /** Every name it was given since it was first renamed: goods may lie under each. */
  knownAs: z
    .array(z.strictObject({ name: nameSchema }))
    .max(1000)
    .default([]),
  contact: z.string().max(500).default(''),
  /** The way of selling, which says tax and usual commission; null where none is chosen. */
  channelId: idSchema.nullable().default(null),
  /** What the shop keeps of its price; null follows the way of selling. */
  commissionShare: z.number().min(0).max(0.95).nullable().default(null),
  /** What that is a share of; null follows the way of selling. */
  commissionBase: z.enum(['withTax', 'withoutTax']).nullable().default(null),
  /** Who bears what is stolen or spoiled there; null where nothing is agreed. */
  bears: z.enum(['maker', 'shop']).nullable().default(null),
  /** Until when what is unsold is fetched. */
  fetchBy: daySchema.nullable().default(null),
  /** Days between its statements; null where nothing is agreed. */
  statementDays: z.int().min(1).max(366).nullable().default(null),
  attachments: z.array(attachmentSchema).max(50).default([]),
  note: z.string().max(4000).default(''),
  archivedOn: daySchema.nullable().default(null),
});

export type Shop = z.infer<typeof shopSchema>;
