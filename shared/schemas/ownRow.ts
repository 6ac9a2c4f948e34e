import { rateSchema } from './rate';
import { z } from './z';

const ownRowDrivers = ['order', 'design', 'session', 'sheet', 'press', 'piece'] as const;
export type OwnRowDriver = (typeof ownRowDrivers)[number];

/** A cost the maker adds: an amount each time something happens, or a formula over the names of the grid. */
export const ownRowSchema = z.strictObject({
  id: z.string().regex(/^own_[a-z][a-z0-9_]{0,30}$/),
  label: z.string().trim().min(1).max(80),
  /** Whether the money leaves the pocket for this job, so that it belongs under the out-of-pocket floor. */
  outOfPocket: z.boolean(),
  cost: z.discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('driver'),
      driver: z.enum(ownRowDrivers),
      amount: rateSchema(['money']),
    }),
    /** Cost of one good piece, in OpenFormula. */
    z.strictObject({ kind: z.literal('formula'), formula: z.string().min(1).max(500) }),
  ]),
});

export type OwnRow = z.infer<typeof ownRowSchema>;
