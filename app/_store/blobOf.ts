/** Small pieces are put together; browsers keep what is a blob of its own out of memory. */
const TOGETHER_BYTES = 1 << 20;

/** @returns one blob of all pieces, each of which is let go of as soon as it is in one. */
export async function blobOf(pieces: AsyncIterable<Uint8Array>, type: string): Promise<Blob> {
  const blobs: Blob[] = [];
  let waiting: Uint8Array<ArrayBuffer>[] = [];
  let bytes = 0;
  for await (const piece of pieces) {
    waiting.push(new Uint8Array(piece));
    bytes += piece.length;
    if (bytes < TOGETHER_BYTES) continue;
    blobs.push(new Blob(waiting));
    waiting = [];
    bytes = 0;
  }
  return new Blob([...blobs, ...waiting], { type });
}
