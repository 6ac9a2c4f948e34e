/** More numbers at once are too many arguments of one call. */
const AT_ONCE = 0x8000;

/** @returns bytes as text that JSON carries. */
export function toBase64(bytes: Uint8Array): string {
  let text = '';
  for (let from = 0; from < bytes.length; from += AT_ONCE) {
    text += String.fromCharCode(...bytes.subarray(from, from + AT_ONCE));
  }
  return btoa(text);
}
