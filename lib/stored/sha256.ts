import { sha256 as digest } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalText } from './canonicalText';

/** @returns SHA-256 of bytes, FIPS 180-4, in lower-case hexadecimal. */
export const sha256OfBytes = (bytes: Uint8Array): string => bytesToHex(digest(bytes));

/**
 * Worked out here and not by the browser, which does it only for pages it calls secure and never inside a
 * transaction of the store.
 *
 * @returns SHA-256 of the canonical text of a JSON value, in lower-case hexadecimal
 */
export const sha256OfValue = (value: unknown): string => sha256OfBytes(utf8ToBytes(canonicalText(value)));

/** Works out a SHA-256 from pieces, for bytes that are never in hand together. */
export interface Sha256Pieces {
  readonly add: (piece: Uint8Array) => void;
  /** Once, after the last piece. */
  readonly end: () => string;
}

export function sha256Pieces(): Sha256Pieces {
  const running = digest.create();
  return { add: (piece) => void running.update(piece), end: () => bytesToHex(running.digest()) };
}
