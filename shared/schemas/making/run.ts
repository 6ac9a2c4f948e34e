import { idSchema, nameSchema } from '@/shared/schemas/basics';
import { sizeNameSchema } from '@/shared/schemas/blank';
import { daySchema } from '@/shared/schemas/rate';
import { z } from '@/shared/schemas/z';
import { covers } from './supply';

/** Goods of a run in one size. */
const runGoods = { jobId: idSchema, lineId: idSchema, size: sizeNameSchema } as const;

/** What is made together: one or several jobs, from the first sheet printed to the last piece packed. */
export const runSchema = z.strictObject({
  name: nameSchema,
  works: z
    .array(
      z.strictObject({
        jobId: idSchema,
        /** For whom it is made; both null where nobody waits for it. */
        orderId: idSchema.nullable().default(null),
        stallDayId: idSchema.nullable().default(null),
      }),
    )
    .max(24)
    .default([]),
  cover: z.enum(covers).default('usual'),
  /** The first day that may be used; null begins as soon as it can. */
  startsOn: daySchema.nullable().default(null),
  /** Own times at the bench, each on its day; null follows the week of the workshop. */
  ownBlocks: z
    .array(
      z.strictObject({
        id: idSchema,
        day: daySchema,
        fromMinute: z.int().min(0).max(1439),
        minutes: z.number().min(1).max(1440),
      }),
    )
    .max(60)
    .nullable()
    .default(null),
  /** The most times that the press is heated up, as the maker accepted; null keeps those that the jobs are priced for. */
  heatings: z.int().min(1).max(60).nullable().default(null),
  /** The order in which sizes are pressed; those not named follow the rule. */
  sizesFirst: z.array(z.strictObject(runGoods)).max(500).default([]),
  /** Transfers are taped at the bench before, so that less is done at the press. */
  isPreTaped: z.boolean().default(false),
  /** Left to dry between printing and pressing, min; null where it is not planned. */
  dryMinutes: z.number().min(0).max(10_000).nullable().default(null),
  /** Left to cool before packing, min; null where it is not planned. */
  coolMinutes: z.number().min(0).max(10_000).nullable().default(null),
  /** Whether printed sheets lie sealed until they are pressed; null where nobody has said. */
  isStoredSealed: z.boolean().nullable().default(null),
  note: z.string().max(4000).default(''),
  archivedOn: daySchema.nullable().default(null),
});

export type Run = z.infer<typeof runSchema>;
export type RunWork = Run['works'][number];
