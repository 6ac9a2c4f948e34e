import type { Copy, NotACopy } from './copy';

/** A copy that was read, and how its files come out of it. */
export interface ReadCopy {
  readonly state: 'copy';
  readonly copy: Copy;
  /** The bytes of a file of the copy, checked when the copy was read. */
  readonly fileOf: (sha256: string) => Promise<Uint8Array<ArrayBuffer> | null>;
}
export type CopyReading = ReadCopy | { readonly state: 'notACopy'; readonly why: NotACopy };
