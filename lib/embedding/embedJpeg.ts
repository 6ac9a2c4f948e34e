import type { RasterHeader } from '@/lib/picture/pictureHeader';
import { colourProfile } from './colourProfile';
import type { EmbeddedPicture, Zip } from './embeddedPicture';
import { jpegParts } from './jpegParts';

/** A JPEG as it came, byte for byte. */
export async function embedJpeg(bytes: Uint8Array, header: RasterHeader, zip: Zip): Promise<EmbeddedPicture> {
  const { channels, isPlainRgb } = jpegParts(bytes);
  const { stored, orientation } = header;
  return {
    stored,
    orientation,
    bits: 8,
    ...(await colourProfile(bytes, header, channels, zip)),
    packing: { kind: 'jpeg', isPlainRgb },
    clearColour: null,
    hasMask: false,
    write: async (take) => {
      take(bytes);
      return null;
    },
  };
}
