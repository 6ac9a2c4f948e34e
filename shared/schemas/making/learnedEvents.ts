import { idSchema } from '@/shared/schemas/basics';
import { positions, sizeNameSchema } from '@/shared/schemas/blank';
import { daySchema } from '@/shared/schemas/rate';
import { sizeMixSchema } from '@/shared/schemas/sizeMix';
import { z } from '@/shared/schemas/z';
import { workElements } from './runEvents';

/** What a measured figure is of. */
const learnedSubjectSchema = z.discriminatedUnion('of', [
  z.strictObject({
    of: z.literal('scrap'),
    blankId: idSchema,
    pressId: idSchema,
    position: z.enum(positions),
  }),
  z.strictObject({ of: z.literal('blankFault'), blankId: idSchema }),
  z.strictObject({ of: z.literal('sheetReject') }),
  z.strictObject({ of: z.literal('blankPrice'), blankId: idSchema, size: sizeNameSchema }),
  z.strictObject({ of: z.literal('sheetPrice'), sheetId: idSchema }),
  z.strictObject({ of: z.literal('consumablePrice'), consumableId: idSchema }),
  z.strictObject({
    of: z.literal('minutes'),
    element: z.enum(workElements),
    blankId: idSchema.nullable(),
    position: z.enum(positions).nullable(),
  }),
  z.strictObject({ of: z.literal('ink') }),
  z.strictObject({ of: z.literal('inkPrice') }),
  /** Of one blank, at a stall. */
  z.strictObject({ of: z.literal('sizeMix'), blankId: idSchema }),
]);

/** A figure as a document holds it: a rate or none, a bare number, or a mix of sizes. */
const heldFigureSchema = z
  .union([
    z.strictObject({
      value: z.number(),
      unit: z.string().regex(/^[a-zA-Z/]{1,20}$/),
      date: daySchema,
      origin: z.enum(['typical', 'yours', 'measured']),
      count: z.int().min(1).exactOptional(),
    }),
    z.number(),
    sizeMixSchema,
  ])
  .nullable();

/** A measured figure took the place of another, and every place it did so; taking it back puts each back as it was. */
export const rateTakenSchema = z.strictObject({
  day: daySchema,
  subject: learnedSubjectSchema,
  value: z.number(),
  /** Presses, runs, sheets: how many observations it rests on. */
  observations: z.int().min(1).max(1e9),
  /** Standard deviation of the observations, or of the estimate where it is a share; null of one. */
  spread: z.number().min(0).nullable(),
  runIds: z.array(idSchema).max(500),
  places: z
    .array(
      z.strictObject({
        kind: z.enum(['job', 'blank', 'workshop', 'stallDay', 'supplier']),
        id: idSchema,
        path: z
          .array(z.union([z.string().regex(/^[a-zA-Z0-9-]{1,80}$/), z.int().min(0).max(10_000)]))
          .min(1)
          .max(12),
        /** As the document held it, and as it holds it now. */
        before: heldFigureSchema,
        after: heldFigureSchema,
      }),
    )
    .max(500),
});

export type RateTaken = z.infer<typeof rateTakenSchema>;
export type LearnedSubject = RateTaken['subject'];
