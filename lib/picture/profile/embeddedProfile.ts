import type { RasterHeader } from '@/lib/picture/pictureHeader';
import { pngStart } from '@/lib/picture/pngStart';
import { pngFacts } from '@/lib/picture/pngSums';
import { riffChunk } from '@/lib/picture/riffChunk';
import { jpegProfile } from './jpegProfile';
import type { ProfileName } from './knownColours';
import { namePngColours } from './namePngColours';

/** Profiles of whole presses hold 2 MB; those of pictures a few hundred bytes. */
export const MOST_PROFILE_BYTES = 4_000_000;

/** Where a picture file says what its colour numbers mean. */
type EmbeddedProfile =
  | {
      readonly kind: 'profile';
      readonly bytes: Uint8Array;
      /** It is one zlib stream and has to be unpacked first. */
      readonly isPacked: boolean;
      /** Colour spaces that fit the picture. */
      readonly spaces: readonly ('RGB ' | 'GRAY')[];
    }
  /** Said without a profile. */
  | { readonly kind: 'named'; readonly name: ProfileName };

/** @returns null where the file says nothing of its colours. */
export function embeddedProfile(
  bytes: Uint8Array,
  { format, colourTag }: Pick<RasterHeader, 'format' | 'colourTag'>,
): EmbeddedProfile | null {
  if (colourTag === 'sRGB') return { kind: 'named', name: 'sRGB' };
  if (colourTag === 'untagged') return null;
  switch (format) {
    case 'png':
      return pngProfile(bytes);
    case 'jpeg': {
      const { profile, isGrey } = jpegProfile(bytes);
      if (profile === null) return { kind: 'named', name: 'unreadable' };
      // Decoders take grey pixels through sRGB as well.
      return {
        kind: 'profile',
        bytes: profile,
        isPacked: false,
        spaces: isGrey ? ['GRAY', 'RGB '] : ['RGB '],
      };
    }
    case 'webp': {
      const place = riffChunk('ICCP', bytes);
      if (place === null) return { kind: 'named', name: 'unreadable' };
      const profile = bytes.subarray(place.at, place.at + place.length);
      return { kind: 'profile', bytes: profile, isPacked: false, spaces: ['RGB '] };
    }
    case 'gif':
      return null;
    default:
      return format satisfies never;
  }
}

/** In the order of the third edition, section 4.3: cICP, iCCP, sRGB, then gAMA with cHRM. */
function pngProfile(bytes: Uint8Array): EmbeddedProfile {
  const { data: dataOf } = pngFacts(bytes);
  const packed = dataOf('iCCP');
  if (packed === null || dataOf('cICP') !== null) return { kind: 'named', name: namePngColours(dataOf) };
  // A name of up to 79 letters, a zero, and the one way of packing there is.
  const end = packed.indexOf(0);
  if (end < 1 || end > 79 || packed[end + 1] !== 0) return { kind: 'named', name: 'unreadable' };
  const { colourType } = pngStart(bytes);
  const isGrey = colourType === 0 || colourType === 4;
  return {
    kind: 'profile',
    bytes: packed.subarray(end + 2),
    isPacked: true,
    spaces: isGrey ? ['GRAY'] : ['RGB '],
  };
}
