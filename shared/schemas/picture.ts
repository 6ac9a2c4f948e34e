import { idSchema } from './basics';
import { z } from './z';

const share = z.number().min(0).max(1);
const sidePx = z.int().min(1).max(100_000);

/** How many strips a picture's ink is told in, each way. */
export const INK_STRIPS = 32;
/** Mean ink of each strip, as a multiple of the mean of the whole picture. */
const strips = z.array(z.number().min(0).max(1e6)).length(INK_STRIPS);

/**
 * Shares of the grey printed with black for which flooded pixels are counted. From a quarter on there are none: no
 * pixel ends above 3 − 2 × 0.25 = 250 %.
 */
export const FLOOD_STEPS = [0, 0.05, 0.1, 0.15, 0.2] as const;

const profileNames = ['sRGB', 'displayP3', 'adobeRgbLike', 'unknown', 'unreadable'] as const;

const pictureFormats = ['png', 'jpeg', 'webp', 'gif', 'svg'] as const;

/** What was read from the maker's own file. The file itself is kept beside the documents under `fileId`. */
export const pictureSchema = z.strictObject({
  fileId: idSchema,
  fileName: z.string().trim().min(1).max(200),
  bytes: z.int().min(1),
  format: z.enum(pictureFormats),
  /** Pixels measured, upright: those of the file, or of a drawing at the size it was read for. */
  width: sidePx,
  height: sidePx,
  /** Pixels an inch the file asks for; null where it does not say. */
  density: z
    .strictObject({ xPpi: z.number().positive().max(1e6), yPpi: z.number().positive().max(1e6) })
    .nullable(),
  bitsPerChannel: z.union([z.literal(1), z.literal(2), z.literal(4), z.literal(8), z.literal(16)]),
  /** Whether the file says what its colour numbers mean. */
  colourTag: z.enum(['sRGB', 'profile', 'untagged']),
  /** Which colours its profile means; `unknown` is none of those named. Null where it has no profile. */
  profile: z.enum(profileNames).nullable().default(null),
  isAnimated: z.boolean(),
  /** Fonts its live text names that the device lacked which read it: it was drawn in others. */
  liveFonts: z.array(z.string().min(1).max(100)).max(20).default([]),
  /** Mean ink over the picture's own box, by channel, all grey with black: what other shares of black come to follows. */
  coverage: z.strictObject({ cyan: share, magenta: share, yellow: share, black: share }),
  /** Share of pixels with heavy ink, all grey with black, and of pixels with a tint hardly seen on a screen. */
  heavyShare: share,
  paleShare: share,
  /** Share of the visible pixels that fade out. */
  softShare: share,
  /** Solid white, and how much of it printed parts enclose. */
  whiteShare: share,
  enclosedWhiteShare: share,
  /** One solid colour all around, with its ink; null where there is none. */
  background: z
    .strictObject({
      rgb: z.tuple([z.number(), z.number(), z.number()]),
      ink: z.number().min(0).max(4),
      prints: z.boolean(),
    })
    .nullable(),
  /** The smallest box around all that is not fully clear; null where nothing is. */
  content: z.strictObject({ x: z.int().min(0), y: z.int().min(0), width: sidePx, height: sidePx }).nullable(),
  /** True where only `content` is printed: clear edges take no paper then. */
  trimmed: z.boolean().default(false),
  /** Pixels an edge takes from dark to light; null where there are too few edges to judge by. */
  edgeWidthPx: z.number().min(0).max(1e5).nullable(),
  /** Ink from left to right and from top to bottom, for prints that crop the picture. */
  inkAcross: strips,
  inkDown: strips,
  /** Where its grey lies, for printers that print less of it with black; null where it was read before that counted. */
  grey: z
    .strictObject({
      across: strips,
      down: strips,
      /** Share of pixels above 250 % of ink, where black prints each of `FLOOD_STEPS` of the grey. */
      floodShares: z.array(share).length(FLOOD_STEPS.length),
    })
    .nullable()
    .default(null),
  /** What the maker has answered about it. */
  accepted: z
    .strictObject({ box: z.boolean().default(false), white: z.boolean().default(false) })
    .default({ box: false, white: false }),
});

export type Picture = z.infer<typeof pictureSchema>;
