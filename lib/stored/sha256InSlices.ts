import { sha256Pieces } from './sha256';

/** Some milliseconds of work on a slow phone. */
const SLICE_BYTES = 128 * 1024;

/**
 * SHA-256 of many bytes without holding up whoever shares the thread.
 *
 * @param pause waited for after each slice
 */
export async function sha256InSlices(bytes: Uint8Array, pause: () => Promise<void>): Promise<string> {
  const { add, end } = sha256Pieces();
  for (let from = 0; from < bytes.length; from += SLICE_BYTES) {
    add(bytes.subarray(from, from + SLICE_BYTES));
    await pause();
  }
  return end();
}
