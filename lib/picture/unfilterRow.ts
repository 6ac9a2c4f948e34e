/**
 * Undoes the filter of a row in place: PNG Specification, third edition, section 9.2.
 *
 * @param step bytes of a pixel
 * @returns false for a number that is no filter
 */
export function unfilterRow(filter: number, line: Uint8Array, above: Uint8Array, step: number): boolean {
  if (filter > 4) return false;
  for (let at = 0; at < line.length; at += 1) {
    const left = at < step ? 0 : (line[at - step] ?? 0);
    const up = above[at] ?? 0;
    const corner = at < step ? 0 : (above[at - step] ?? 0);
    line[at] = (line[at] ?? 0) + predicted(filter, left, up, corner);
  }
  return true;
}

/** What a filter takes a byte to be, from those beside it. */
export function predicted(filter: number, left: number, up: number, corner: number): number {
  if (filter === 0) return 0;
  if (filter === 1) return left;
  if (filter === 2) return up;
  if (filter === 3) return (left + up) >> 1;
  const guess = left + up - corner;
  const offLeft = Math.abs(guess - left);
  const offUp = Math.abs(guess - up);
  const offCorner = Math.abs(guess - corner);
  if (offLeft <= offUp && offLeft <= offCorner) return left;
  return offUp <= offCorner ? up : corner;
}
