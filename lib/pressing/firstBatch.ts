/** Pieces after which one looks closely before going on: press one, look; press to the third, look; then run. Common practice. */
const LOOKED_AT = [1, 3];

/** @returns whether the piece just lifted, the so-manyth of its print, is one to look at closely */
export const isLookedAt = (pressed: number): boolean => LOOKED_AT.includes(pressed);
