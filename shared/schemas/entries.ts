import { idSchema, lengthMmSchema, nameSchema } from './basics';
import { daySchema } from './rate';
import { z } from './z';

/** Ink poured in, always to the same mark. */
export const inkRefillSchema = z.strictObject({
  day: daySchema,
  mL: z.number().positive().max(100_000),
  /** Poured in before what was printed that day; where nothing is said, after it. */
  beforePrints: z.literal(true).exactOptional(),
});

/** What was printed, for the record of ink. */
export const inkPrintsSchema = z.strictObject({
  day: daySchema,
  name: nameSchema,
  prints: z.int().min(0).max(100_000),
  /** Mean ink over the print's own box, channels added; 1 = one channel covering fully. */
  total: z.number().min(0).max(4),
  widthMm: lengthMmSchema,
  heightMm: lengthMmSchema,
  /** Times the printer was started for it; 0 where it shared another entry's session. */
  sessions: z.int().min(0).max(1000),
  /** The job it was printed for; null for what was noted by hand or before jobs were named. */
  jobId: idSchema.nullable().default(null),
});

/** The customer said yes to one version of an artwork; null takes an earlier yes away. */
export const approvalSchema = z.strictObject({
  artworkId: idSchema,
  version: z.int().min(1).max(10_000).nullable(),
});

/** A paper went out; while this is in force the paper is, and taking it back withdraws the paper. */
export const issuingSchema = z.strictObject({ paperId: idSchema });

/** Why a paper was withdrawn: chosen and not typed, so that it names nobody. */
export const withdrawalReasons = ['mistake', 'otherWish', 'sentTwice', 'other'] as const;

/** An earlier entry does not count any more. */
export const takeBackSchema = z.strictObject({
  entryId: idSchema,
  /**
   * Nobody judged the entry: it came from a copy, and that was undone; or a copy without it took the place of
   * everything. It is out on this device alone, and if it comes again it counts again.
   */
  cause: z.enum(['arrivalUndone', 'replaced']).exactOptional(),
  /** Of a paper that was withdrawn, where its maker said why. */
  why: z.enum(withdrawalReasons).exactOptional(),
});

export type InkRefill = z.infer<typeof inkRefillSchema>;
export type InkPrints = z.infer<typeof inkPrintsSchema>;
export type Approval = z.infer<typeof approvalSchema>;
export type Issuing = z.infer<typeof issuingSchema>;
export type WithdrawalReason = (typeof withdrawalReasons)[number];
export type TakeBack = z.infer<typeof takeBackSchema>;
