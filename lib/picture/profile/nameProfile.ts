import { byteReader } from '@/lib/picture/byteReader';
import { curveAtHalf } from './curveAtHalf';
import { type ProfileName, spaceOf } from './knownColours';

/* ICC.1:2022 (ISO 15076-1): the header of 128 bytes, the table of tags, and the types of those read here. */
const HEADER_BYTES = 128;
const MOST_TAGS = 200;
const PLACE = { use: 12, colourSpace: 16, link: 20, mark: 36, tags: HEADER_BYTES } as const;
/** Uses a picture's own profile may have, and what it may lead to: decoders and PDF (ISO 32000-1, table 66) agree. */
const USES: readonly string[] = ['scnr', 'mntr', 'prtr', 'spac'];
const LINKS: readonly string[] = ['XYZ ', 'Lab '];
/** Tables that stand in place of primaries and curves. */
const TABLES = ['A2B0', 'A2B1', 'A2B2'] as const;

/** Half of an encoded value is 0.214 of the light in sRGB and 0.218 at a gamma of 2.2; 0.287 at 1.8. */
const USUAL_HALF = { least: 0.195, most: 0.24 } as const;

/**
 * Names a colour profile by what it does, not by what it is called.
 *
 * @param spaces colour spaces a profile of this picture may have
 * @returns `unreadable` for one that is damaged, `otherSpace` for one that is not the picture's: decoders pass both over
 */
export function nameProfile(
  profile: Uint8Array,
  spaces: readonly ('RGB ' | 'GRAY')[],
): ProfileName | 'otherSpace' {
  const reader = byteReader(profile);
  const length = reader.u32(0);
  if (length === null || length < HEADER_BYTES + 4 || length > profile.length) return 'unreadable';
  const isProfile =
    reader.word(PLACE.mark, 4) === 'acsp' &&
    USES.includes(reader.word(PLACE.use, 4)) &&
    LINKS.includes(reader.word(PLACE.link, 4));
  const tags = isProfile ? tagsOf(profile.subarray(0, length)) : null;
  if (tags === null) return 'unreadable';
  const space = reader.word(PLACE.colourSpace, 4);
  if (!spaces.some((each) => each === space)) return 'otherSpace';
  if (space === 'GRAY') return curveAtHalf(tags.get('kTRC')) === null ? 'unreadable' : 'unknown';
  const name = nameOfColours(tags);
  // Grey through sRGB is grey as it stands; through other colours it has no meaning of its own.
  return spaces.includes('GRAY') && name !== 'sRGB' && name !== 'unreadable' ? 'otherSpace' : name;
}

function nameOfColours(tags: ReadonlyMap<string, Uint8Array>): ProfileName {
  const primaries = ['rXYZ', 'gXYZ', 'bXYZ'].map((tag) => xyzOf(tags.get(tag)));
  const halves = ['rTRC', 'gTRC', 'bTRC'].map((tag) => curveAtHalf(tags.get(tag)));
  const whole = primaries.flatMap((each) => (each === null ? [] : [each]));
  // Where a profile has both, decoders follow its tables, which say more than primaries.
  if (TABLES.some((tag) => tags.has(tag))) return 'unknown';
  if (whole.length < 3 || halves.includes(null)) return 'unreadable';
  const isUsual = halves.every((half) => half !== null && half > USUAL_HALF.least && half < USUAL_HALF.most);
  return isUsual ? (spaceOf(whole, 'xyz') ?? 'unknown') : 'unknown';
}

/** Null where the table or a tag lies outside the profile. */
function tagsOf(profile: Uint8Array): ReadonlyMap<string, Uint8Array> | null {
  const reader = byteReader(profile);
  const count = reader.u32(PLACE.tags);
  if (count === null || count > MOST_TAGS) return null;
  const tags = new Map<string, Uint8Array>();
  for (let at = PLACE.tags + 4; tags.size < count; at += 12) {
    const from = reader.u32(at + 4);
    const length = reader.u32(at + 8);
    if (from === null || length === null || from + length > profile.length) return null;
    const name = reader.word(at, 4);
    if (tags.has(name)) return null;
    tags.set(name, profile.subarray(from, from + length));
  }
  return tags;
}

function xyzOf(tag: Uint8Array | undefined): readonly number[] | null {
  const reader = byteReader(tag ?? new Uint8Array());
  if (reader.word(0, 4) !== 'XYZ ') return null;
  const [x, y, z] = [reader.u32(8), reader.u32(12), reader.u32(16)];
  return x === null || y === null || z === null ? null : [x, y, z].map((value) => (value | 0) / 65_536);
}
