import type { RasterHeader } from '@/lib/picture/pictureHeader';
import { pngFacts } from '@/lib/picture/pngSums';
import { knownSpaces } from '@/lib/picture/profile/knownColours';
import { namePngColours } from '@/lib/picture/profile/namePngColours';
import { type PngLight, pngLight, primariesOf } from '@/lib/picture/profile/pngLight';
import { colourProfile, type NotedColours } from './colourProfile';
import type { Colours, Zip } from './embeddedPicture';

/** White of D65, then the primaries of sRGB: IEC 61966-2-1. */
const SRGB_XY = [[0.3127, 0.329], ...(knownSpaces.find(({ name }) => name === 'sRGB')?.xy ?? [])] as const;

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
  return { colours: calibrated(light, primariesOf(data) ?? SRGB_XY, channels), note: null };
}

function calibrated(
  { gamma, toSrgb }: PngLight,
  told: readonly (readonly [number, number])[],
  channels: 1 | 3,
): Colours {
  const [white = xyz(1, 1), ...primaries] = (toSrgb === null ? SRGB_XY : told).map(([x, y]) => xyz(x, y));
  const [red = white, green = white, blue = white] = primaries;
  const three = [red, green, blue] as const;
  return {
    kind: 'calibrated',
    channels,
    gamma: 1 / gamma,
    white,
    matrix: three.flatMap((primary, at) => primary.map((value) => value * share(three, white, at))),
  };
}

type Triple = readonly [number, number, number];

const xyz = (x: number, y: number): Triple => [x / y, 1, (1 - x - y) / y];

/** How much of a primary is in white, by Cramer's rule. */
function share(primaries: readonly [Triple, Triple, Triple], white: Triple, at: number): number {
  const [a, b, c] = primaries;
  const changed = primaries.map((primary, place) => (place === at ? white : primary));
  const [x = a, y = b, z = c] = changed;
  return volume(x, y, z) / volume(a, b, c);
}

const volume = (a: Triple, b: Triple, c: Triple): number =>
  a[0] * (b[1] * c[2] - b[2] * c[1]) -
  b[0] * (a[1] * c[2] - a[2] * c[1]) +
  c[0] * (a[1] * b[2] - a[2] * b[1]);
