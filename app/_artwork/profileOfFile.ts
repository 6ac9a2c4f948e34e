import type { RasterHeader } from '@/lib/picture/pictureHeader';
import { embeddedProfile, MOST_PROFILE_BYTES } from '@/lib/picture/profile/embeddedProfile';
import type { ProfileName } from '@/lib/picture/profile/knownColours';
import { nameProfile } from '@/lib/picture/profile/nameProfile';
import { inflate } from './inflate';

/** @returns what a picture says its colour numbers mean; null where it says nothing. */
export async function profileOfFile(bytes: Uint8Array, header: RasterHeader): Promise<ProfileName | null> {
  const found = embeddedProfile(bytes, header);
  if (found === null) return null;
  if (found.kind === 'named') return found.name;
  const profile = found.isPacked ? await inflate([found.bytes], MOST_PROFILE_BYTES) : found.bytes;
  const name = profile === null ? 'unreadable' : nameProfile(profile, found.spaces);
  // Either way the picture is taken as sRGB.
  return name === 'otherSpace' ? 'unreadable' : name;
}
