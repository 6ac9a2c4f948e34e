import { byteReader } from '@/lib/picture/byteReader';
import { judgeProfile } from './colourProfile';
import { type ColourNote, type Colours, DamagedPicture, type Zip } from './embeddedPicture';

/** Which chunks say what a PNG's numbers mean, by their names. */
type ChunkData = (type: string) => Uint8Array | null;

interface Named {
  readonly colours: Colours;
  readonly note: ColourNote | null;
}

/** sRGB by the numbers of ITU-T H.273: primaries 1, transfer 13. */
const SRGB_CODE = [1, 13] as const;
/** Profiles hold a few hundred bytes to some megabytes. */
const MOST_PROFILE_BYTES = 16_000_000;
/** A header is enough to judge one. */
const HEAD_BYTES = 128;
/* Chromaticities of sRGB as cHRM stores them, times 100,000: PNG Specification, third edition, section 11.3.2.5. */
const SRGB_CHRM = [31_270, 32_900, 64_000, 33_000, 30_000, 60_000, 15_000, 6_000] as const;

/**
 * What a PNG says of its colours, the strongest word first: cICP, iCCP, sRGB, gAMA with cHRM.
 *
 * @param isTold whether its gamma is one to go by
 * @returns null where a page has no words for it
 */
export async function pngColours(
  chunk: ChunkData,
  channels: 1 | 3,
  isTold: boolean,
  zip: Zip,
): Promise<Named | null> {
  const device: Named = { colours: { kind: 'device', channels }, note: null };
  const code = chunk('cICP');
  if (code !== null) return code[0] === SRGB_CODE[0] && code[1] === SRGB_CODE[1] ? device : null;
  const profile = chunk('iCCP');
  if (profile !== null) return byProfile(profile, channels, zip);
  const gamma = byteReader(chunk('gAMA') ?? new Uint8Array()).u32(0);
  if (!isTold || gamma === null || gamma === 0) return device;
  return { colours: calibrated(gamma / 100_000, chunk('cHRM'), channels), note: null };
}

/** iCCP: a name of up to 79 letters, a zero, the way of packing, the packed profile. */
async function byProfile(chunk: Uint8Array, channels: 1 | 3, zip: Zip): Promise<Named> {
  const packed = chunk.subarray(chunk.indexOf(0) + 2);
  const { head, length } = await headOf(packed, zip);
  const verdict = judgeProfile(head, length, channels);
  return verdict === 'fits'
    ? { colours: { kind: 'profile', channels, profile: [packed], isPacked: true }, note: null }
    : { colours: { kind: 'device', channels }, note: verdict };
}

async function headOf(packed: Uint8Array, zip: Zip) {
  const head = new Uint8Array(HEAD_BYTES);
  let length = 0;
  try {
    for await (const part of zip.inflate([packed])) {
      if (length < HEAD_BYTES) head.set(part.subarray(0, HEAD_BYTES - length), length);
      length += part.length;
      if (length > MOST_PROFILE_BYTES) return { head, length: 0 };
    }
  } catch (error) {
    if (!(error instanceof DamagedPicture)) throw error;
    // No length holds what its header promises, so that it is judged unreadable.
    return { head, length: 0 };
  }
  return { head, length };
}

function calibrated(encoding: number, chroma: Uint8Array | null, channels: 1 | 3): Colours {
  const { u32 } = byteReader(chroma ?? new Uint8Array());
  const told = SRGB_CHRM.map((_, at) => u32(at * 4));
  const known = told.every((number) => number !== null && number > 0) ? told : SRGB_CHRM;
  const [wx = 0, wy = 0, rx = 0, ry = 0, gx = 0, gy = 0, bx = 0, by = 0] = known.map(
    (number) => (number ?? 0) / 100_000,
  );
  const white = xyz(wx, wy);
  const primaries = [xyz(rx, ry), xyz(gx, gy), xyz(bx, by)] as const;
  return {
    kind: 'calibrated',
    channels,
    gamma: 1 / encoding,
    white,
    matrix: primaries.flatMap((primary, at) => primary.map((value) => value * share(primaries, white, at))),
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
