import { type AttachmentRefusal, takeAttachment } from '@/app/_attachments/takeAttachment';
import { today } from '@/app/_clock/useToday';
import { breathing } from '@/app/_store/breathing';
import { inspectPicture } from '@/lib/picture/inspectPicture';
import type { PictureProblem } from '@/lib/picture/pictureProblem';
import { bytesOfFile, type StoredFile } from '@/lib/stored/storedFile';
import type { KeptFile } from '@/shared/schemas/keptFile';

/** Every paper carries it whole. */
const MOST_LOGO_BYTES = 5_000_000;

/** Why a file cannot stand at the head of papers. */
type LogoRefusal =
  | { readonly why: 'file'; readonly refusal: AttachmentRefusal }
  | { readonly why: 'picture'; readonly problem: PictureProblem }
  | { readonly why: 'heavy'; readonly bytes: number; readonly most: number }
  /** Drawings of lines have no pixels that a paper could take. */
  | { readonly why: 'drawing' };

type LogoTaken =
  | { readonly state: 'taken'; readonly logo: KeptFile; readonly file: StoredFile }
  | { readonly state: 'refused'; readonly refusal: LogoRefusal };

/** Takes in a picture for the head of papers, or says why not; nothing is changed then. */
export async function takeLogo(chosen: File): Promise<LogoTaken> {
  if (chosen.size > MOST_LOGO_BYTES)
    return refused({ why: 'heavy', bytes: chosen.size, most: MOST_LOGO_BYTES });
  const taken = await takeAttachment(chosen, { purpose: 'other', addedOn: today(), pause: breathing() });
  if (taken.state === 'refused') return refused({ why: 'file', refusal: taken.why });
  const bytes = await bytesOfFile(taken.file);
  if (bytes === null) return refused({ why: 'file', refusal: { code: 'notReadable' } });
  const header = inspectPicture(bytes);
  if (!header.ok)
    return refused(
      header.problem.kind.startsWith('svg')
        ? { why: 'drawing' }
        : { why: 'picture', problem: header.problem },
    );
  if (header.value.kind === 'vector') return refused({ why: 'drawing' });
  const { fileId, fileName, bytes: size } = taken.attachment;
  // By what it is and not by what its name says, since it is shown as that.
  const mediaType = `image/${header.value.format}`;
  return { state: 'taken', logo: { fileId, fileName, bytes: size, mediaType }, file: taken.file };
}

// Helpers

const refused = (refusal: LogoRefusal): LogoTaken => ({ state: 'refused', refusal });
