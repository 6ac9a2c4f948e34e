/* Markers of ITU-T T.81, table B.1. */
export const MARKER = {
  tables: 0xc4,
  restart: 0xd0,
  end: 0xd9,
  scan: 0xda,
  restartEvery: 0xdd,
  jfif: 0xe0,
  exif: 0xe1,
  profile: 0xe2,
  adobe: 0xee,
} as const;

/** Of the frames that decoders read; the last is progressive. */
export const HUFFMAN_FRAMES: readonly number[] = [0xc0, 0xc1, 0xc2];
