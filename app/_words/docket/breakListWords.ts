import type { Formatter } from '@/app/_words/formatter';
import { breakTotal } from '@/lib/price/list/breakList';
import type { BreakGroup } from '@/lib/studies/breaks/breakGroups';
import { formatMinor, type MinorUnits } from '@/shared/money';
import { sizesWords } from './sizesWords';

/** How a list is spoken of: whose figures, in which currency, read by whom. */
export interface BreakListFormat {
  readonly formatter: Formatter;
  readonly currency: string;
  readonly locale: string;
  /** All sizes of the line that are made, in their order. */
  readonly sizes: readonly string[];
}

/** @returns sizes as they stand in their line: a row from one to the other, or each by its name. */
export function someSizes(sizes: readonly string[], all: readonly string[]): string {
  const first = all.indexOf(sizes[0] ?? '');
  const isRow = sizes.every((size, index) => all[first + index] === size);
  return isRow ? sizesWords(sizes) : sizes.join(', ');
}

/** @returns one sentence for each stretch of quantities that cost more than a larger one; alike sizes share theirs. */
export function stretchWords(groups: readonly BreakGroup[], format: BreakListFormat): readonly string[] {
  const told = new Map<string, { readonly words: string; readonly sizes: readonly string[]; of: string }>();
  for (const { list, stretches, sizes } of groups) {
    for (const { from, to, cheaperAt, cheaperTotal } of stretches) {
      const key = `${from} ${to} ${cheaperAt}`;
      const known = told.get(key);
      if (known !== undefined) {
        told.set(key, { ...known, sizes: [...known.sizes, ...sizes] });
        continue;
      }
      const totals = Array.from({ length: to - from + 1 }, (_, index) => breakTotal(list, from + index) ?? 0);
      const pieces = from === to ? format.formatter.count(from, 'piece') : `${from} to ${to} pieces`;
      const words = `${pieces} would cost more than ${cheaperAt}: ${totalsWords(totals, format)} against ${money(cheaperTotal, format)} ${format.currency}`;
      told.set(key, { words, sizes, of: someSizes(sizes, format.sizes) });
    }
  }
  return [...told.values()].map(({ words, sizes, of }) => {
    if (groups.length === 1) return `${words}.`;
    return sizes.length === format.sizes.length
      ? `${words} in ${of}, and the same in every size.`
      : `${words} in ${someSizes(sizes, format.sizes)}.`;
  });
}

/** @returns one sentence for the quantities that cost exactly what a larger one does; '' for none. */
export function tieWords(groups: readonly BreakGroup[], format: BreakListFormat): string {
  const ties = [
    ...new Map(groups.flatMap((group) => group.ties).map((tie) => [`${tie.n} ${tie.as}`, tie])).values(),
  ];
  if (ties.length === 0) return '';
  const each = ties.map(({ n, as }) => `${n} and ${as}`);
  const where = groups.length > 1 && groups.some((group) => group.ties.length === 0) ? ', in some sizes' : '';
  return `${each.join(', ')} pieces cost the same${where}: a tie, and no fault.`.replace(/^./, (letter) =>
    letter.toLocaleUpperCase(format.locale),
  );
}

const MOST_THIN = 3;

/** @returns a sentence about next pieces that bring in less than they cause; '' for none. */
export function thinWords(groups: readonly BreakGroup[], format: BreakListFormat): string {
  const [group] = groups.filter(({ thin }) => thin.length > 0);
  if (group === undefined) return '';
  const where = groups.length > 1 ? ` in ${someSizes(group.sizes, format.sizes)}` : '';
  const floor = format.formatter.money(group.nextPieceFloor);
  if (group.thin.every(({ onPurpose }) => onPurpose))
    return `Under a cap the last pieces before a break bring in less than the ${floor} that one more costs${where}. That is what the cap is for.`;
  const told = group.thin
    .slice(0, MOST_THIN)
    .map(({ n, paid }) => `piece ${n} brings in ${money(paid, format)}`)
    .join(', ');
  const more = group.thin.length > MOST_THIN ? ' and so on' : '';
  return `Thin steps: ${told} ${format.currency}${more}${where}, and one more costs ${floor}. No total falls by it; you only work for nothing there.`;
}

// Helpers

const money = (minor: number, { currency, locale }: BreakListFormat): string =>
  formatMinor(minor as MinorUnits, currency, locale);

function totalsWords(totals: readonly number[], format: BreakListFormat): string {
  const [first = 0, second] = totals;
  if (second === undefined) return money(first, format);
  if (totals.length === 2) return `${money(first, format)} and ${money(second, format)}`;
  return `${money(Math.min(...totals), format)} to ${money(Math.max(...totals), format)}`;
}
