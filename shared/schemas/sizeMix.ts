import { sizeNameSchema } from './blank';
import { z } from './z';

/** Crowds whose usual mix of sizes is known. */
export const stallAudiences = ['adults', 'women', 'youth', 'trades', 'runners'] as const;
export type StallAudience = (typeof stallAudiences)[number];

/** Pieces that orders asked for, by size, as the maker agreed to reckon with them; left out where nobody did. */
const orderedSchema = z
  .array(z.strictObject({ size: sizeNameSchema, pieces: z.int().min(1).max(1e6) }))
  .min(1)
  .max(60)
  .exactOptional();

export const sizeMixSchema = z.discriminatedUnion('from', [
  z.strictObject({
    from: z.literal('audience'),
    audience: z.enum(stallAudiences),
    ordered: orderedSchema,
  }),
  z.strictObject({
    from: z.literal('typed'),
    shares: z
      .array(z.strictObject({ size: sizeNameSchema, share: z.number().min(0).max(1) }))
      .min(1)
      .max(30),
    ordered: orderedSchema,
  }),
]);

export type SizeMix = z.infer<typeof sizeMixSchema>;
