/** Bounds of a picture file, checked before anything is decoded. */
export const pictureLimits = {
  /** A 16-bit picture of 3000 × 3600 px holds 65 MB before packing; ordinary files stay below 20 MB. */
  mostBytes: 100_000_000,
  /** 50 million pixels print 24 × 36 in at 240 ppi and take 200 MB once decoded. */
  mostPixels: 50_000_000,
  /** The longest side every common browser decodes. */
  mostSidePx: 16_384,
  /** A single pixel or line of pixels is a counter or a slip, never artwork. */
  leastSidePx: 2,
  /** Sixteen bits a channel are read at full depth up to this many pixels, 20 bytes each on the way; in eight above. */
  mostDeepPixels: 12_000_000,
} as const;
