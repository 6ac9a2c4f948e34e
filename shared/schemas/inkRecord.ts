import { idSchema, lengthMmSchema, nameSchema } from './basics';
import { daySchema } from './rate';
import { z } from './z';

/** More than a shop prints in years; older entries can be put together. */
const MOST_INK_ENTRIES = 2000;

/** What the maker notes of ink: bottles poured in, always to the same mark, and what was printed. */
export const inkRecordSchema = z.strictObject({
  refills: z
    .array(z.strictObject({ id: idSchema, day: daySchema, mL: z.number().positive().max(100_000) }))
    .max(MOST_INK_ENTRIES)
    .default([]),
  runs: z
    .array(
      z.strictObject({
        id: idSchema,
        day: daySchema,
        name: nameSchema,
        prints: z.int().min(0).max(100_000),
        /** Mean ink over the print's own box, channels added; 1 = one channel covering fully. */
        total: z.number().min(0).max(4),
        widthMm: lengthMmSchema,
        heightMm: lengthMmSchema,
        /** Times the printer was started for it; 0 where it shared another entry's session. */
        sessions: z.int().min(0).max(1000),
      }),
    )
    .max(MOST_INK_ENTRIES)
    .default([]),
});

export type InkRecord = z.infer<typeof inkRecordSchema>;
