import type { Formatter } from '@/app/_words/formatter';

/** How good a fair is, by what it takes beside its fee. [common practice] */
const RULE = '8 to 10 is a good fair, under 5 a poor one, by common practice';

/**
 * @param whose as “Takings”
 * @param takings with tax, currency units
 * @param fee of the stall, currency units; null where there is none or nobody told it
 * @returns null without a fee
 */
export const timesFeeWords = (
  whose: string,
  takings: number,
  fee: number | null,
  { number }: Pick<Formatter, 'number'>,
): string | null =>
  fee === null || fee <= 0 ? null : `${whose} are ${number(takings / fee, 1)} times the stall fee: ${RULE}.`;
