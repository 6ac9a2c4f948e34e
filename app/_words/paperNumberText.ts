import type { PaperNumber } from '@/shared/schemas/happened';

/** The number of a paper as it is said and written: the count, and the letter of the device that issued it. */
export const paperNumberText = ({ count, letter }: PaperNumber): string => `${count}${letter ?? ''}`;
