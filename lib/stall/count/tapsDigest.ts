import { sha256OfValue } from '@/lib/stored/sha256';

/** As many hexadecimal digits tell days apart by chance once in 10^19. */
const DIGITS = 16;

/** @returns by what a close knows which taps it rests on, in whatever order they come */
export const tapsDigest = (ids: readonly string[]): string => sha256OfValue(ids.toSorted()).slice(0, DIGITS);
