/**
 * What one press takes beside what its recipe says, seconds; common practice, from memory. Preheating and cooling stand
 * in where a recipe does not tell them.
 */
export const pressCycleSeconds = {
  loadAndLint: 20,
  preheat: 10,
  alignAndTape: 45,
  /** With transfers that were taped at the bench before. */
  alignTaped: 20,
  coolInPlace: 12,
  peelAndUnload: 12,
} as const;
