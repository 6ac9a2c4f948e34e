/** More than this noted for one day, min, is more likely a slip than work; from memory. */
export const LONG_DAY_MINUTES = 16 * 60;
