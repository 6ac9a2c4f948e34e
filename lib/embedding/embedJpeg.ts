import type { RasterHeader } from '@/lib/picture/pictureHeader';
import { judgeProfile } from './colourProfile';
import type { ColourNote, Colours, EmbeddedPicture } from './embeddedPicture';
import { type JpegParts, jpegParts } from './jpegParts';

/** A JPEG as it came, byte for byte. */
export function embedJpeg(bytes: Uint8Array, { stored, orientation }: RasterHeader): EmbeddedPicture {
  const parts = jpegParts(bytes);
  const { colours, note } = coloursOf(parts);
  return {
    stored,
    orientation,
    bits: 8,
    colours,
    packing: { kind: 'jpeg', isPlainRgb: parts.isPlainRgb },
    clearColour: null,
    hasMask: false,
    note,
    write: async (take) => {
      take(bytes);
      return null;
    },
  };
}

function coloursOf({ channels, profile }: JpegParts): {
  readonly colours: Colours;
  readonly note: ColourNote | null;
} {
  const device: Colours = { kind: 'device', channels };
  if (profile === null) return { colours: device, note: null };
  const [head = new Uint8Array()] = profile;
  const length = profile.reduce((sum, piece) => sum + piece.length, 0);
  const verdict = judgeProfile(head, length, channels);
  return verdict === 'fits'
    ? { colours: { kind: 'profile', channels, profile, isPacked: false }, note: null }
    : { colours: device, note: verdict };
}
