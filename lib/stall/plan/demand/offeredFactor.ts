/**
 * A day or two of one's own tell a factor no closer (the product's own choice).
 *
 * @param learned what days before left of a dry one, share
 * @returns the same to a whole hundredth, as it is offered and taken
 */
export const offeredFactor = (learned: number): number => Math.round(learned * 100) / 100;
