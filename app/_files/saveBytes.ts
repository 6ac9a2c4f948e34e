import { saveBlob } from './saveBlob';

/** Hands the maker a file; it never leaves the device. */
export const saveBytes = (name: string, bytes: Uint8Array, type: string): void =>
  saveBlob(name, new Blob([new Uint8Array(bytes)], { type }));
