import { LENGTH_TOLERANCE_MM } from '@/shared/units';
import { lengthMmSchema, nameSchema } from './basics';
import { pictureSchema } from './picture';
import { rateSchema } from './rate';
import { z } from './z';

const channelShare = z.number().min(0).max(1);

/** Mean ink over the print's own box, 1 = one channel covering fully; typed as a total or by channel. */
const coverageSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('total'), total: z.number().min(0).max(4) }),
  z.strictObject({
    kind: z.literal('channels'),
    cyan: channelShare,
    magenta: channelShare,
    yellow: channelShare,
    black: channelShare,
  }),
]);

export const artworkSchema = z.strictObject({
  name: nameSchema,
  /** Size in pixels; null for line art, which is clean at any size. */
  pixels: z
    .strictObject({ width: z.int().min(1).max(100_000), height: z.int().min(1).max(100_000) })
    .nullable()
    .default(null),
  /** The maker's own figure; null where the picture's is used, or the typical one. */
  coverage: coverageSchema.nullable().default(null),
  /** What was read from the file; null where figures are entered by hand. */
  picture: pictureSchema.nullable().default(null),
  /** The smallest parts that must stay sharp, measured at one width of the picture; null where nobody measured. */
  finest: z
    .strictObject({
      atWidthMm: lengthMmSchema,
      /** Height of the smallest capitals; null where there are no letters. */
      capHeightMm: z.number().min(LENGTH_TOLERANCE_MM).max(2000).nullable(),
      /** The thinnest line; null where there is none. */
      lineMm: z.number().min(LENGTH_TOLERANCE_MM).max(2000).nullable(),
      /** Light letters or lines on dark fill in sooner. */
      reversed: z.boolean(),
    })
    .nullable()
    .default(null),
  /** Whether a colour of it has to match one that the customer named, and whether a pressed swatch was approved. */
  colourMatch: z.enum(['free', 'wanted', 'approved']).default('free'),
  /** True where the picture itself is already flipped for the transfer. */
  mirrored: z.boolean().default(false),
  rights: z.strictObject({
    state: z.enum(['own', 'permission', 'promised', 'notStated', 'none']),
    note: z.string().max(500).default(''),
  }),
  version: z.int().min(1).max(10_000).default(1),
  /** Minutes to check, repair or draw it, once. */
  prepMinutes: rateSchema(['min']),
});

export type Artwork = z.infer<typeof artworkSchema>;
export type Coverage = z.infer<typeof coverageSchema>;
