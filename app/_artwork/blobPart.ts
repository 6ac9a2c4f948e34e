/** @returns the same bytes as a blob takes them; copied only where other threads could write them */
export const blobPart = (bytes: Uint8Array): Uint8Array<ArrayBuffer> =>
  bytes.buffer instanceof ArrayBuffer
    ? new Uint8Array(bytes.buffer, bytes.byteOffset, bytes.length)
    : new Uint8Array(bytes);
