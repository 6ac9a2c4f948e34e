import { artworkSchema } from './artwork';
import { idSchema } from './basics';
import { blankSchema } from './blank';
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
});

export type JobInput = z.infer<typeof jobInputSchema>;
