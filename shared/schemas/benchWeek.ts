import { idSchema } from './basics';
import { daySchema } from './rate';
import { z } from './z';

/** A from–to time that is free for the bench each week. It may run past midnight. */
export const blockSchema = z.strictObject({
  id: idSchema,
  /** The day it begins on, 0 for Monday to 6 for Sunday. */
  weekday: z.int().min(0).max(6),
  /** Minutes after midnight, by the wall clock. */
  fromMinute: z.int().min(0).max(1439),
  minutes: z.number().min(1).max(1440),
});

/** Days without bench time, both ends included. */
export const daysOffSchema = z.strictObject({
  id: idSchema,
  from: daySchema,
  to: daySchema,
  /** What for, in the maker's words. */
  what: z.string().max(80).default(''),
});

export type Block = z.infer<typeof blockSchema>;
export type DaysOff = z.infer<typeof daysOffSchema>;
