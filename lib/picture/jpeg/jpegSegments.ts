import { byteReader } from '@/lib/picture/byteReader';

interface JpegSegment {
  readonly marker: number;
  readonly data: Uint8Array;
}

const START_OF_SCAN = 0xda;
/** Markers that stand alone, without a length: ITU-T T.81, table B.1. */
const BARE = { temporary: 0x01, first: 0xd0, last: 0xd8 } as const;

/** Segments before the first pixels of a JPEG, the frame among them; ends where the file is no longer one. */
export function* jpegSegments(bytes: Uint8Array): Generator<JpegSegment> {
  const reader = byteReader(bytes);
  for (let at = 2; ; ) {
    const marker = reader.u8(at + 1);
    if (reader.u8(at) !== 0xff || marker === null || marker === START_OF_SCAN) return;
    if (marker === 0xff) {
      at += 1;
    } else if (marker === BARE.temporary || (marker >= BARE.first && marker <= BARE.last)) {
      at += 2;
    } else {
      const length = reader.u16(at + 2);
      if (length === null) return;
      yield { marker, data: bytes.subarray(at + 4, at + 2 + length) };
      at += 2 + length;
    }
  }
}
