import { byteReader } from '@/lib/picture/byteReader';

/** What the segments before the pixels of a JPEG say of its colours. */
export interface JpegParts {
  readonly channels: 1 | 3;
  /** Red, green and blue stored as such, and no marker that says so. */
  readonly isPlainRgb: boolean;
  /** Pieces of the profile in their order; null where there is none, none of them where one is missing. */
  readonly profile: readonly Uint8Array[] | null;
}

/* Markers of ITU-T T.81, table B.1; the profile's segments: ICC.1:2022, annex B.4. */
const START_OF_SCAN = 0xda;
const FRAMES: readonly number[] = [0xc0, 0xc1, 0xc2];
const APP = { jfif: 0xe0, profile: 0xe2, adobe: 0xee } as const;
const PROFILE_WORD = 'ICC_PROFILE\0';
const PROFILE_HEAD_BYTES = PROFILE_WORD.length + 2;

/** Walks over the segments of a JPEG whose header was found sound. */
export function jpegParts(bytes: Uint8Array): JpegParts {
  const reader = byteReader(bytes);
  const pieces = new Map<number, Uint8Array>();
  let wanted: number | null = null;
  let ids = '';
  let channels: 1 | 3 = 3;
  let saysHow = false;
  for (let at = 2; reader.u8(at) === 0xff; ) {
    const marker = reader.u8(at + 1) ?? START_OF_SCAN;
    if (marker === START_OF_SCAN) break;
    if (marker === 0xff || marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8)) {
      at += marker === 0xff ? 1 : 2;
      continue;
    }
    const length = reader.u16(at + 2) ?? 2;
    const word = (text: string) => reader.word(at + 4, text.length) === text;
    if (FRAMES.includes(marker)) {
      channels = reader.u8(at + 9) === 1 ? 1 : 3;
      ids = reader.word(at + 10, 1) + reader.word(at + 13, 1) + reader.word(at + 16, 1);
    } else if (marker === APP.profile && word(PROFILE_WORD)) {
      wanted = reader.u8(at + 4 + PROFILE_WORD.length + 1);
      pieces.set(
        reader.u8(at + 4 + PROFILE_WORD.length) ?? 0,
        bytes.subarray(at + 4 + PROFILE_HEAD_BYTES, at + 2 + length),
      );
    } else if ((marker === APP.jfif && word('JFIF\0')) || (marker === APP.adobe && word('Adobe'))) {
      saysHow = true;
    }
    at += 2 + Math.max(2, length);
  }
  return {
    channels,
    isPlainRgb: channels === 3 && !saysHow && ids === 'RGB',
    profile: wanted === null ? null : inOrder(pieces, wanted),
  };
}

function inOrder(pieces: ReadonlyMap<number, Uint8Array>, count: number): readonly Uint8Array[] {
  const sorted = Array.from({ length: count }, (_, at) => pieces.get(at + 1));
  const whole = sorted.filter((piece) => piece !== undefined);
  return whole.length === count ? whole : [];
}
