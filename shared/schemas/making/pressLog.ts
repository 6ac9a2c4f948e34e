import { idSchema } from '@/shared/schemas/basics';
import { positions } from '@/shared/schemas/blank';
import { recipeSchema } from '@/shared/schemas/job';
import { attachmentSchema } from '@/shared/schemas/keptFile';
import { daySchema } from '@/shared/schemas/rate';
import { z } from '@/shared/schemas/z';
import { pressFaults } from '@/shared/tables/faults';

const noteSchema = z.string().max(500).default('');
const lotSchema = z.string().trim().min(1).max(80).nullable().default(null);
const scoreSchema = z.int().min(1).max(5).nullable().default(null);

/** One press on scrap cloth, or the first of a run, looked at closely. Scores 1 worst to 5 best. */
export const pressTestSchema = z.strictObject({
  runId: idSchema.nullable().default(null),
  jobId: idSchema.nullable().default(null),
  day: daySchema,
  blankId: idSchema,
  lot: lotSchema,
  pressId: idSchema,
  position: z.enum(positions).nullable().default(null),
  artworkId: idSchema.nullable().default(null),
  /** Mean ink of the print, channels added. */
  coverage: z.number().min(0).max(4).nullable().default(null),
  /** As set. */
  recipe: recipeSchema,
  measuredC: z.number().min(0).max(500).nullable().default(null),
  roomC: z.number().min(-40).max(60).nullable().default(null),
  humidity: z.number().min(0).max(1).nullable().default(null),
  paperLot: lotSchema,
  inkLot: lotSchema,
  scores: z.strictObject({
    density: scoreSchema,
    sharpness: scoreSchema,
    scorch: scoreSchema,
    pressLine: scoreSchema,
    ghost: scoreSchema,
    specks: scoreSchema,
    evenness: scoreSchema,
  }),
  faults: z.array(z.enum(pressFaults)).max(13).default([]),
  photo: attachmentSchema.nullable().default(null),
  note: noteSchema,
});

/** A pressed piece after so many washes. */
export const washCheckSchema = z.strictObject({
  testId: idSchema.nullable().default(null),
  day: daySchema,
  blankId: idSchema,
  pressId: idSchema,
  recipe: recipeSchema,
  cycles: z.int().min(1).max(1000),
  /** Grey scale, ISO 105-A02: 1 to 5 in halves. */
  grade: z.number().min(1).max(5),
  note: noteSchema,
});

export type PressTest = z.infer<typeof pressTestSchema>;
export type WashCheck = z.infer<typeof washCheckSchema>;
