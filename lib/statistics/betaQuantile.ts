import { betaShare } from './betaShare';

/** Halvings after which a share is as exact as it can be written. */
const MOST_HALVINGS = 120;

/**
 * By halving, which cannot run away where the density is steep.
 *
 * @param chance 0 to 1
 * @param a above 0
 * @param b above 0
 * @returns the share that one drawn from Beta(a, b) does not exceed with that chance
 * @example betaQuantile(0.25, 1, 1) // => 0.25
 */
export function betaQuantile(chance: number, a: number, b: number): number {
  if (chance <= 0) return 0;
  if (chance >= 1) return 1;
  let low = 0;
  let high = 1;
  for (let turn = 0; turn < MOST_HALVINGS; turn += 1) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (betaShare(middle, a, b) < chance) low = middle;
    else high = middle;
  }
  return high;
}
