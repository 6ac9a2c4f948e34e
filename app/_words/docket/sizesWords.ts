/**
 * Sizes in a row, in words.
 *
 * @example sizesWords(['S', 'M', 'L', 'XL']) // 'S to XL'
 */
export function sizesWords(sizes: readonly string[]): string {
  const first = sizes[0] ?? '';
  const last = sizes[sizes.length - 1] ?? '';
  if (sizes.length <= 1) return first;
  return sizes.length === 2 ? `${first} and ${last}` : `${first} to ${last}`;
}
