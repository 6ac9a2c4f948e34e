import { byteReader } from '@/lib/picture/byteReader';
import { joinedBytes } from '@/lib/picture/joinedBytes';
import { HUFFMAN_FRAMES, MARKER } from '@/lib/picture/jpeg/jpegMarkers';
import { jpegSegments } from '@/lib/picture/jpeg/jpegSegments';

const WORD = 'ICC_PROFILE\0';
/** The word, the number of this part, and how many there are: ICC.1:2022, B.4. */
const BEFORE_PART = WORD.length + 2;

/** @returns the profile of a JPEG put together from its parts; null where parts are missing. */
export function jpegProfile(bytes: Uint8Array): {
  readonly profile: Uint8Array | null;
  readonly isGrey: boolean;
} {
  const parts = new Map<number, Uint8Array>();
  let wanted = 0;
  let isGrey = false;
  for (const { marker, data } of jpegSegments(bytes)) {
    const { word, u8 } = byteReader(data);
    if (HUFFMAN_FRAMES.includes(marker)) isGrey = u8(5) === 1;
    if (marker !== MARKER.profile || word(0, WORD.length) !== WORD) continue;
    wanted = Math.max(wanted, u8(WORD.length + 1) ?? 0);
    parts.set(u8(WORD.length) ?? 0, data.subarray(BEFORE_PART));
  }
  const pieces = Array.from({ length: wanted }, (_, index) => parts.get(index + 1) ?? null);
  const known = pieces.filter((piece) => piece !== null);
  const isWhole = wanted > 0 && known.length === wanted;
  return { profile: isWhole ? joinedBytes(known) : null, isGrey };
}
