import { joinedBytes } from '@/lib/picture/joinedBytes';
import type { RasterHeader } from '@/lib/picture/pictureHeader';
import { embeddedProfile, MOST_PROFILE_BYTES } from '@/lib/picture/profile/embeddedProfile';
import { nameProfile } from '@/lib/picture/profile/nameProfile';
import { type ColourNote, type Colours, DamagedPicture, type Zip } from './embeddedPicture';

export interface NotedColours {
  readonly colours: Colours;
  readonly note: ColourNote | null;
}

/** The profile of a picture where the screen goes by it too; the device's colours, and why, where it does not. */
export async function colourProfile(
  bytes: Uint8Array,
  header: RasterHeader,
  channels: 1 | 3,
  zip: Zip,
): Promise<NotedColours> {
  const device: Colours = { kind: 'device', channels };
  const found = embeddedProfile(bytes, header);
  if (found === null) return { colours: device, note: null };
  if (found.kind === 'named') {
    return { colours: device, note: found.name === 'unreadable' ? 'unreadable' : null };
  }
  const whole = found.isPacked ? await unpacked(found.bytes, zip) : found.bytes;
  const name = whole === null ? 'unreadable' : nameProfile(whole, found.spaces);
  if (name === 'unreadable' || name === 'otherSpace') return { colours: device, note: name };
  // Three channels are no profile for one; grey through sRGB is the device's grey.
  if (channels === 1 && name === 'sRGB') return { colours: device, note: null };
  const { bytes: profile, isPacked } = found;
  return { colours: { kind: 'profile', channels, profile, isPacked }, note: null };
}

/** Null where the stream is broken or longer than any profile. */
async function unpacked(packed: Uint8Array, zip: Zip): Promise<Uint8Array | null> {
  const parts: Uint8Array[] = [];
  let length = 0;
  try {
    for await (const part of zip.inflate([packed])) {
      length += part.length;
      if (length > MOST_PROFILE_BYTES) return null;
      parts.push(part);
    }
  } catch (error) {
    if (!(error instanceof DamagedPicture)) throw error;
    return null;
  }
  return joinedBytes(parts);
}
