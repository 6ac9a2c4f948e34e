import type { OrderNumber } from '@/shared/schemas/orderEvents';

/**
 * A number as it stands on papers: year, count of the device, letter of the device.
 *
 * @example orderNumberText({ year: 2026, count: 14, letter: 'A' }) // => '26-014A'
 */
export const orderNumberText = ({ year, count, letter }: OrderNumber): string =>
  `${String(year % 100).padStart(2, '0')}-${String(count).padStart(3, '0')}${letter}`;
