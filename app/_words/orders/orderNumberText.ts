import type { OrderNumber } from '@/shared/schemas/orderEvents';

/** The number of an order as it is said and written: 26-014A. */
export const orderNumberText = ({ year, count, letter }: OrderNumber): string =>
  `${String(year % 100).padStart(2, '0')}-${String(count).padStart(3, '0')}${letter}`;
