/** Stands where a name stood that had to go. */
export const ERASED = 'Erased';
