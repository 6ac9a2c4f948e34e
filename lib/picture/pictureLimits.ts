import { MOST_FILE_BYTES } from '@/shared/schemas/keptFile';

/** Bounds of a picture file, checked before anything is decoded. */
export const pictureLimits = {
  /** A 16-bit picture of 3000 × 3600 px holds 65 MB before packing; ordinary files stay below 20 MB. */
  mostBytes: MOST_FILE_BYTES,
  /** 50 million pixels print 24 × 36 in at 240 ppi and take 200 MB once decoded. */
  mostPixels: 50_000_000,
  /** The longest side every common browser decodes. */
  mostSidePx: 16_384,
  /** A single pixel or line of pixels is a counter or a slip, never artwork. */
  leastSidePx: 2,
  /** Sixteen bits a channel are read at full depth up to this many pixels, 20 bytes each on the way; in eight above. */
  mostDeepPixels: 12_000_000,
  /** Shapes of a drawing with all copies: 100,000 take two seconds on a small machine. */
  mostShapes: 100_000,
  /** Shapes drawn beyond those written in the file: a copy costs three times a shape, 20,000 take a second. */
  mostCopies: 20_000,
  /** Masks, steps of filters and sheer groups: each may be as large as the picture and takes 25 to 80 ms then. */
  mostEffects: 200,
} as const;
