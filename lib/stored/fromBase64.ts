/** A multiple of four: each slice is such a text by itself. */
const SLICE_CHARACTERS = 256 * 1024;

/**
 * @param pause waited for after each slice, so that whoever shares the thread gets a turn
 * @returns the bytes of such a text; null where it is none
 */
export async function fromBase64(
  text: string,
  pause: () => Promise<void>,
): Promise<Uint8Array<ArrayBuffer> | null> {
  const bytes = new Uint8Array(Math.ceil((text.length * 3) / 4));
  let length = 0;
  for (let from = 0; from < text.length; from += SLICE_CHARACTERS) {
    const binary = binaryOf(text.slice(from, from + SLICE_CHARACTERS));
    // Only the last slice may end before its end.
    if (binary === null || length !== (from * 3) / 4) return null;
    for (let at = 0; at < binary.length; at += 1) bytes[length + at] = binary.charCodeAt(at);
    length += binary.length;
    await pause();
  }
  return bytes.slice(0, length);
}

function binaryOf(text: string): string | null {
  try {
    return atob(text);
  } catch {
    return null;
  }
}
