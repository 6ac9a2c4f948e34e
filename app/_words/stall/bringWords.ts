import { numberLimits } from '@/shared/limits';
import { stallDaySchema } from '@/shared/schemas/stallDay';

/** Pieces of one size that can be held at most. */
export const MOST_BROUGHT = numberLimits(stallDaySchema, ['held', 0, 'bring']).max ?? Number.MAX_SAFE_INTEGER;

/** @returns what undo calls taking the advice: “Take the advice for Fern shirt” */
export const takeLabel = (what: string): string => `Take the advice for ${what}`;

/** @returns what is spoken on the button of a row; begins with what stands on it */
export const takeRowWords = (advised: number, what: string): string =>
  `take ${advised} as advised for ${what}`;
