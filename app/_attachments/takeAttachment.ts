import { sha256Pieces } from '@/lib/stored/sha256';
import type { StoredFile } from '@/lib/stored/storedFile';
import { textLimits } from '@/shared/limits';
import {
  type Attachment,
  attachmentSchema,
  keptFileSchema,
  MOST_FILE_BYTES,
} from '@/shared/schemas/keptFile';

/** Why a file is not taken in; nothing is changed then. */
export type AttachmentRefusal =
  /** Told before anything of it is read. */
  | { readonly code: 'tooLarge'; readonly bytes: number; readonly most: number }
  | { readonly code: 'empty' }
  /** The device could not read it: it was moved, or is a folder. */
  | { readonly code: 'notReadable' };

/** A file as a record names it, and as it is kept: both go to the store together. */
type AttachmentTaken =
  | { readonly state: 'taken'; readonly attachment: Attachment; readonly file: StoredFile }
  | { readonly state: 'refused'; readonly why: AttachmentRefusal };

interface Taking extends Pick<Attachment, 'purpose' | 'addedOn'> {
  /** Taken after each slice, so that the page answers meanwhile. */
  readonly pause: () => Promise<void>;
}

/**
 * Takes a file of any kind in, a slice at a time. What is kept is what was hashed: the file may be written over on the
 * disk meanwhile.
 */
export async function takeAttachment(
  file: File,
  { purpose, addedOn, pause }: Taking,
): Promise<AttachmentTaken> {
  if (file.size > MOST_FILE_BYTES)
    return { state: 'refused', why: { code: 'tooLarge', bytes: file.size, most: MOST_FILE_BYTES } };
  if (file.size === 0) return { state: 'refused', why: { code: 'empty' } };
  try {
    const { sha256, content } = await readInSlices(file, pause);
    const attachment = attachmentSchema.parse({
      ...{ fileId: sha256, fileName: keptName(file.name), bytes: file.size },
      ...{ mediaType: keptType(file.type), purpose, addedOn },
    });
    return { state: 'taken', attachment, file: { id: sha256, name: attachment.fileName, content } };
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    return { state: 'refused', why: { code: 'notReadable' } };
  }
}

// Helpers

/** Read at once; browsers keep what is a blob of its own out of memory. */
const READ_BYTES = 1 << 20;
/** Some milliseconds of work on a slow phone. */
const HASHED_BYTES = 128 * 1024;

async function readInSlices(
  file: Blob,
  pause: () => Promise<void>,
): Promise<{ readonly sha256: string; readonly content: Blob }> {
  const { add, end } = sha256Pieces();
  const blobs: Blob[] = [];
  for (let from = 0; from < file.size; from += READ_BYTES) {
    const bytes = new Uint8Array(await file.slice(from, from + READ_BYTES).arrayBuffer());
    for (let at = 0; at < bytes.length; at += HASHED_BYTES) {
      add(bytes.subarray(at, at + HASHED_BYTES));
      await pause();
    }
    blobs.push(new Blob([bytes]));
  }
  return { sha256: end(), content: new Blob(blobs) };
}

/** Keeps the ending, which says what it is. */
function keptName(name: string): string {
  const plain = name.trim() || 'file';
  return plain.length <= textLimits(keptFileSchema, ['fileName']).longest
    ? plain
    : `${plain.slice(0, 150)}…${plain.slice(-40)}`;
}

const keptType = (type: string): string =>
  type.length <= textLimits(keptFileSchema, ['mediaType']).longest ? type.toLowerCase() : '';
