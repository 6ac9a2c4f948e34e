/** Beyond it a double holds no chance but 0 or 1. */
const FARTHEST = 8;

/**
 * @param chance above 0, below 1
 * @returns the value a standard normal variable does not exceed with that chance; −8 to 8
 */
export function normalQuantile(chance: number): number {
  if (chance < 0.5) return 0 - normalQuantile(1 - chance);
  let low = 0;
  let high = FARTHEST;
  for (let turn = 0; turn < 80; turn += 1) {
    const middle = (low + high) / 2;
    if (normalShare(middle) < chance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

// Helpers

/** Φ of 0 or more by its series x + x³ ÷ 3 + x⁵ ÷ (3·5) + …; G. Marsaglia, Journal of Statistical Software 11(4), 2004. */
function normalShare(x: number): number {
  let term = x;
  let sum = x;
  for (let by = 3; term > sum * 1e-17; by += 2) {
    term *= (x * x) / by;
    sum += term;
  }
  return 0.5 + (sum * Math.exp((-x * x) / 2)) / Math.sqrt(2 * Math.PI);
}
