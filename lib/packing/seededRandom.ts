/** Gives numbers from 0 to just under 1, one after the other. */
export type Random = () => number;

/**
 * A row of numbers that look drawn by chance and are the same for the same seed (mulberry32, T. Ettinger, 2017).
 *
 * @param seed whole number
 */
export function seededRandom(seed: number): Random {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
