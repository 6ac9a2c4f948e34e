import { saveBlob } from '@/app/_files/saveBlob';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { Attachment } from '@/shared/schemas/keptFile';

/**
 * Pictures of dots hold nothing that runs. A page or a drawing would run in the app's own name, with all that is kept
 * here within reach, so everything else is saved and never opened.
 */
const shownTypes: ReadonlySet<string> = new Set(['image/png', 'image/jpeg', 'image/webp', 'image/gif']);

/** @returns whether a file can be looked at here. */
export const canBeShown = ({ mediaType }: Pick<Attachment, 'mediaType'>): boolean =>
  shownTypes.has(mediaType);

/** Opens a picture in a tab of its own, as the kind it was told to be and as nothing else. */
export function showFile({ content }: Pick<StoredFile, 'content'>, { mediaType }: Attachment): void {
  const url = URL.createObjectURL(new Blob([content], { type: mediaType }));
  const link = document.createElement('a');
  link.href = url;
  link.target = '_blank';
  link.rel = 'noopener';
  link.click();
  // The new tab reads it once.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** Saves a file under its name, as bytes of no kind. */
export const saveAttachment = ({ content }: Pick<StoredFile, 'content'>, { fileName }: Attachment): void =>
  saveBlob(fileName, new Blob([content], { type: 'application/octet-stream' }));
