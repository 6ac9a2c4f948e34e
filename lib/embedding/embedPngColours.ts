import type { RasterHeader } from '@/lib/picture/pictureHeader';
import { pngFacts } from '@/lib/picture/pngSums';
import { type Pair, srgbXy } from '@/lib/picture/profile/knownColours';
import { turned } from '@/lib/picture/profile/matrix';
import { namePngColours } from '@/lib/picture/profile/namePngColours';
import { type PngLight, pngLight, primariesOf } from '@/lib/picture/profile/pngLight';
import { toXyz, xyzOf } from '@/lib/picture/profile/toXyz';
import { colourProfile, type NotedColours } from './colourProfile';
import type { Colours, Zip } from './embeddedPicture';

/**
 * The colours of a PNG as a page has them, by its strongest word: cICP, iCCP, sRGB, gAMA with cHRM.
 *
 * @returns null where a page has no words for it
 */
export async function embedPngColours(
  bytes: Uint8Array,
  header: RasterHeader,
  channels: 1 | 3,
  zip: Zip,
): Promise<NotedColours | null> {
  const { data } = pngFacts(bytes);
  if (data('cICP') !== null && namePngColours(data) !== 'sRGB') return null;
  // A gamma near that of sRGB is no gamma to go by.
  const light = header.colourTag === 'profile' ? pngLight(data) : null;
  if (light === null) return colourProfile(bytes, header, channels, zip);
  return { colours: calibrated(light, primariesOf(data) ?? srgbXy, channels), note: null };
}

function calibrated({ gamma, toSrgb }: PngLight, told: readonly Pair[], channels: 1 | 3): Colours {
  const [white = srgbXy[0], ...primaries] = toSrgb === null ? srgbXy : told;
  return {
    kind: 'calibrated',
    channels,
    gamma: 1 / gamma,
    white: xyzOf(white),
    // Primaries that span no colours lead to no sRGB (`pngLight`): then those of sRGB stand here.
    matrix: turned(toXyz(primaries, white) ?? []).flat(),
  };
}
