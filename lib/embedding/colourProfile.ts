import { byteReader } from '@/lib/picture/byteReader';
import type { ColourNote } from './embeddedPicture';

/* ICC.1:2022, section 7.2: the header of a profile. */
const HEADER_BYTES = 128;
const AT = { size: 0, use: 12, space: 16, link: 20, signature: 36 } as const;
/** Uses a picture's own profile may have in a PDF: ISO 32000-1, table 66. */
const USES: readonly string[] = ['scnr', 'mntr', 'prtr', 'spac'];
const LINKS: readonly string[] = ['XYZ ', 'Lab '];

/**
 * Whether a picture's colours can be told by a profile.
 *
 * @param head the profile, or its first bytes
 * @param bytes its length
 */
export function judgeProfile(head: Uint8Array, bytes: number, channels: 1 | 3): ColourNote | 'fits' {
  const { word, u32 } = byteReader(head);
  const size = u32(AT.size);
  const isProfile =
    head.length >= HEADER_BYTES &&
    word(AT.signature, 4) === 'acsp' &&
    size !== null &&
    size <= bytes &&
    USES.includes(word(AT.use, 4)) &&
    LINKS.includes(word(AT.link, 4));
  if (!isProfile) return 'unreadable';
  return word(AT.space, 4) === (channels === 3 ? 'RGB ' : 'GRAY') ? 'fits' : 'otherSpace';
}
