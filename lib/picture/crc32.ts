/** The polynomial of ISO 3309 and ITU-T V.42, turned around: PNG Specification, third edition, annex D. */
const POLYNOMIAL = 0xedb88320;
const BITS = 8;

const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < BITS; bit += 1)
    value = (value & 1) === 1 ? (value >>> 1) ^ POLYNOMIAL : value >>> 1;
  return value;
});

/** @returns the check sum that follows each chunk of a PNG. */
export function crc32(bytes: Uint8Array): number {
  let value = 0xffffffff;
  for (let at = 0; at < bytes.length; at += 1) {
    value = (table[(value ^ (bytes[at] ?? 0)) & 0xff] ?? 0) ^ (value >>> BITS);
  }
  return (value ^ 0xffffffff) >>> 0;
}
