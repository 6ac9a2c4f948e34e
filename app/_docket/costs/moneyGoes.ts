import { costShares } from '@/lib/grid/costShares';
import type { CostSheet } from '@/lib/grid/costSheet';
import { formatNumber } from '@/shared/formatNumber';

/** How many lines the sentence names. */
const NAMED = 3;

/**
 * Where the money goes, in one sentence; ink is always named, because it is the one that makers overrate.
 *
 * @returns nothing where nothing costs anything
 */
export function moneyGoes(sheet: CostSheet, locale: string): string {
  const shares = costShares(sheet);
  const named = shares.filter(({ rowId, share }, index) => share > 0 && (index < NAMED || rowId === 'ink'));
  const label = (rowId: string) => inSentence(sheet.rows.find(({ id }) => id === rowId)?.label ?? rowId);
  if (named.length === 0) return '';
  const parts = named.map(({ rowId, share }) => `${label(rowId)} ${percent(share, locale)}`);
  return `Where the money goes: ${parts.join(', ')}.`;
}

// Helpers

const inSentence = (label: string): string => label.slice(0, 1).toLowerCase() + label.slice(1);

const percent = (share: number, locale: string): string =>
  share < 0.01 ? 'under 1\u00a0%' : `${formatNumber(share * 100, locale, { maxDecimals: 0 })}\u00a0%`;
