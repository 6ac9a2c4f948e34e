import type { KnownLayouts } from '@/shared/packedSheets';
import { artworkSchema } from './artwork';
import { idSchema } from './basics';
import { blankSchema, sizeNameSchema } from './blank';
import { jobSchema } from './job';
import { daySchema } from './rate';
import { workshopSchema } from './workshop';
import { z } from './z';

/** Everything one job is costed from. Blanks and artworks are named by the ids the job uses. */
export const jobInputSchema = z.strictObject({
  /** The day on which it is asked; ages of rates and dates are counted from it. */
  asOf: daySchema,
  workshop: workshopSchema,
  blanks: z.record(idSchema, blankSchema),
  artworks: z.record(idSchema, artworkSchema),
  job: jobSchema,
  /** Blanks that lie at home in first grade, by blank and size. A size nobody counted is left out, which is not 0. */
  onHand: z.record(idSchema, z.record(sizeNameSchema, z.number().min(-1e6).max(1e6))).default({}),
  /** Version of each artwork that the customer has approved; left out where there is none. */
  approvedVersions: z.record(idSchema, z.int().min(1).max(10_000)).default({}),
});

export interface JobInput extends z.infer<typeof jobInputSchema> {
  /** Layouts of its shared sheets that were looked for longer; every sum takes them where it meets their question. */
  readonly layouts?: KnownLayouts | undefined;
}
