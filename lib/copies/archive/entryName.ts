import { strFromU8 } from 'fflate';

/** @returns the name of an entry; bytes that are no text stand as other letters, which nothing of ours has. */
export const entryName = (view: DataView, at: number, length: number): string =>
  strFromU8(new Uint8Array(view.buffer, view.byteOffset + at, length), true);

/** @returns each byte as one letter, which is enough to tell what something is. */
export const entryText = (bytes: Uint8Array): string => strFromU8(bytes, true);
