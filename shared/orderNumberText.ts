import type { PaperNumber } from './schemas/happened';
import type { OrderNumber } from './schemas/orderEvents';

/**
 * A number as it stands on papers: year, count of the device, letter of the device.
 *
 * @example orderNumberText({ year: 2026, count: 14, letter: 'A' }) // => '26-014A'
 */
export const orderNumberText = ({ year, count, letter }: OrderNumber): string =>
  countedText(year, count, letter);

/** @returns the number of a paper that is counted by kind, device and year: 26-007A. */
export const seriesNumberText = ({ count, letter }: PaperNumber, issuedOn: string): string =>
  countedText(Number(issuedOn.slice(0, 4)), count, letter ?? '');

/**
 * The version of a quote or a confirmation: counted by each device, so the letter stands with it where the order was
 * numbered by another.
 *
 * @example versionText({ count: 2, letter: 'B' }, { year: 2026, count: 14, letter: 'A' }) // => '2B'
 */
export const versionText = ({ count, letter }: PaperNumber, order: OrderNumber | null): string =>
  `${count}${order !== null && letter !== order.letter ? (letter ?? '') : ''}`;

const countedText = (year: number, count: number, letter: string): string =>
  `${String(year % 100).padStart(2, '0')}-${String(count).padStart(3, '0')}${letter}`;
