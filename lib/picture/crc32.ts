/** The polynomial of ISO 3309 and ITU-T V.42, turned around: PNG Specification, third edition, annex D. */
const POLYNOMIAL = 0xedb88320;
const BITS = 8;

const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < BITS; bit += 1)
    value = (value & 1) === 1 ? (value >>> 1) ^ POLYNOMIAL : value >>> 1;
  return value;
});

/**
 * The check sum that follows each chunk of a PNG and goes with each file of an archive.
 *
 * @param before of the bytes that came before these, so that it can be worked out piece by piece
 */
export function crc32(bytes: Uint8Array, before = 0): number {
  let value = ~before;
  for (let at = 0; at < bytes.length; at += 1) {
    value = (table[(value ^ (bytes[at] ?? 0)) & 0xff] ?? 0) ^ (value >>> BITS);
  }
  return ~value >>> 0;
}
