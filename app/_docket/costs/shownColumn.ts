import { type CostSheet, caseValue, wholeJob } from '@/lib/grid/costSheet';
import { formatNumber } from '@/shared/formatNumber';
import { formatMinor, LARGEST_AMOUNT, type MinorUnits, shownParts, toMinor } from '@/shared/money';

/** One column of the cost sheet as it is written. */
interface ShownColumn {
  readonly parts: readonly string[];
  /** The same in whole minor units; null beyond the largest amount that is kept to the cent. */
  readonly minor: readonly MinorUnits[] | null;
  /** What a part would be shown as by itself, where the column needs it a cent up or down; else null. */
  readonly byThemselves: readonly (string | null)[];
  readonly total: string;
}

/**
 * A column in the currency's own digits, its parts rounded so that they add to the total that stands under them.
 *
 * @param lines ids of the rows that add to full cost
 * @param at index of a case; null for the whole job
 */
export function shownColumn(
  sheet: CostSheet,
  lines: readonly string[],
  at: number | null,
  locale: string,
): ShownColumn {
  const value = (id: string) => (at === null ? wholeJob(sheet, id) : caseValue(sheet, id, at));
  const parts = lines.map(value);
  const total = value('fullCost');
  const { currency } = sheet;
  if ([total, ...parts].some((amount) => Math.abs(amount) > LARGEST_AMOUNT)) {
    // Beyond the largest amount no cents are kept, so there are none to share out.
    const coarse = (amount: number) => formatNumber(amount, locale, { maxDecimals: 0 });
    return {
      parts: parts.map(coarse),
      minor: null,
      byThemselves: parts.map(() => null),
      total: coarse(total),
    };
  }
  const written = (minor: MinorUnits) => formatMinor(minor, currency, locale);
  const shown = shownParts(total, parts, currency);
  return {
    parts: shown.map(written),
    minor: shown,
    byThemselves: parts.map((part, index) => {
      const own = toMinor(part, currency);
      return own === shown[index] ? null : written(own);
    }),
    total: formatMinor(toMinor(total, currency), currency, locale),
  };
}
