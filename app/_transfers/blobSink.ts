import { blobPart } from '@/app/_artwork/blobPart';

/** Bytes that wait in memory before the browser takes them. */
const WAITING_BYTES = 4_194_304;

interface BlobSink {
  readonly take: (bytes: Uint8Array) => void;
  readonly file: () => Blob;
}

/** Collects a file in blobs, which the browser keeps outside the worker's memory, on its disk where it has to. */
export function blobSink(type: string): BlobSink {
  const blobs: Blob[] = [];
  let waiting: Uint8Array<ArrayBuffer>[] = [];
  let bytes = 0;
  const flush = () => {
    blobs.push(new Blob(waiting));
    waiting = [];
    bytes = 0;
  };
  return {
    take(part) {
      waiting.push(blobPart(part));
      bytes += part.length;
      if (bytes >= WAITING_BYTES) flush();
    },
    file() {
      flush();
      return new Blob(blobs, { type });
    },
  };
}
