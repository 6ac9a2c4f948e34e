import { idSchema } from './basics';
import { daySchema } from './rate';
import { z } from './z';

/** What the weather left of a dry day by the plan, and how long each held while the stall was open. */
export const closedWeatherSchema = z.strictObject({
  factor: z.number().min(0).max(1e3),
  parts: z
    .array(z.strictObject({ day: daySchema, weatherId: idSchema, minutes: z.number().min(0).max(1440) }))
    .min(1)
    .max(42),
});

/** Of which days the evening was told the weather, and which. */
export const weatherSaidSchema = z.array(z.strictObject({ day: daySchema, weatherId: idSchema })).max(7);
