/** @returns a whole number from figures: the same figures give the same number (FNV-1a, 32 bits). */
export function seedOf(figures: readonly (number | string)[]): number {
  let hash = 0x811c9dc5;
  for (const letter of JSON.stringify(figures)) {
    hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  }
  return hash >>> 0;
}

/** @returns draws from 0 up to 1, the same for the same seed; a counter through a 32-bit mixer. */
export function drawsFrom(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
