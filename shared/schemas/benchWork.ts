import { nameSchema } from './basics';
import { z } from './z';

const minutesSchema = z.number().min(0).max(1e9);
const countSchema = z.number().min(0).max(1e9);

const looseWorkSchema = z.strictObject({
  what: z.enum(['desk', 'print', 'finish', 'pack', 'deliver']),
  minutes: minutesSchema,
});

/** What a job asks of the bench, as it is kept; minutes on the clock. */
export const benchWorkSchema = z.strictObject({
  before: z.array(looseWorkSchema).max(10),
  /** Null where nothing is pressed. */
  press: z
    .strictObject({
      pieces: countSchema,
      sessions: countSchema,
      setUpMinutes: minutesSchema,
      cleanDownMinutes: minutesSchema,
      breakMinutes: minutesSchema,
      inkMl: z.number().min(0).max(1e6),
      runs: z.array(z.strictObject({ name: nameSchema, minutes: minutesSchema })).max(2000),
    })
    .nullable(),
  after: z.array(looseWorkSchema).max(10),
});
