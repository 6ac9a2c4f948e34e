import type { ByteSource } from '@/lib/copies/archive/byteSource';

/** @returns a file of the maker's, of which no more is in memory than is being read. */
export const blobSource = (blob: Blob): ByteSource => ({
  size: blob.size,
  read: async (from, to) => new Uint8Array(await blob.slice(from, to).arrayBuffer()),
});
