import { formatNumber } from '@/shared/formatNumber';

/** Shares that have a name. */
const named: readonly (readonly [number, string])[] = [
  [1 / 5, 'a fifth'],
  [1 / 4, 'a quarter'],
  [1 / 3, 'a third'],
  [1 / 2, 'half'],
  [2 / 3, 'two thirds'],
  [3 / 4, 'three quarters'],
];
/** So near to it, a share is called by the name alone; up to so far below, nearly. */
const NEAR = 0.015;
const NEARLY = 0.05;

/**
 * A share as a person says it; in per cent where no name is near.
 *
 * @example shareWords(0.457, 'en') // 'nearly half'
 */
export function shareWords(share: number, locale: string): string {
  const exact = named.find(([value]) => Math.abs(share - value) <= NEAR);
  if (exact !== undefined) return exact[1];
  const above = named.find(([value]) => value > share && value - share <= NEARLY);
  if (above !== undefined) return `nearly ${above[1]}`;
  return `${formatNumber(share * 100, locale, { maxDecimals: 0 })} %`;
}
