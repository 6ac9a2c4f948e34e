import { numberLimits } from '@/shared/limits';
import { type StallDay, stallDaySchema } from '@/shared/schemas/stallDay';

/** Pieces of one size that can be held at most. */
export const MOST_BROUGHT = numberLimits(stallDaySchema, ['held', 0, 'bring']).max ?? Number.MAX_SAFE_INTEGER;

/** @returns what stands in the place of the numbers while there are none */
export const bringNone = ({ ranges }: Pick<StallDay, 'ranges'>): string =>
  ranges.some(({ designs }) => designs.length > 0)
    ? 'The numbers come with the plan; what it still needs stands above.'
    : 'Say what is brought and how many will be asked for, under “Goods and forecast”.';

/** @returns what undo calls taking the advice: “Take the advice for Fern shirt” */
export const takeLabel = (what: string): string => `Take the advice for ${what}`;

/** @returns what is spoken on the button of a row; begins with what stands on it */
export const takeRowWords = (advised: number, what: string): string =>
  `take ${advised} as advised for ${what}`;
