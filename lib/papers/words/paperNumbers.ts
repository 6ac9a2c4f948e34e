import type { PaperNumber } from '@/shared/schemas/happened';
import type { OrderNumber } from '@/shared/schemas/orderEvents';

/** @returns an order's number as it is said and written: 26-014A. */
export const orderNumberText = ({ year, count, letter }: OrderNumber): string =>
  countedText(year, count, letter);

/** @returns the number of a paper that is counted by kind, device and year: 26-007A. */
export const seriesNumberText = ({ count, letter }: PaperNumber, issuedOn: string): string =>
  countedText(Number(issuedOn.slice(0, 4)), count, letter ?? '');

const countedText = (year: number, count: number, letter: string): string =>
  `${String(year % 100).padStart(2, '0')}-${String(count).padStart(3, '0')}${letter}`;
