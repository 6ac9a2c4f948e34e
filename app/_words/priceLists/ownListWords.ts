import { breakWords } from '@/app/_words/docket/breakWords';
import { formatterFor, type TextContext } from '@/app/_words/formatter';
import { usableLocale } from '@/app/_words/usableLocale';
import type { OwnTable } from '@/lib/papers/bodies/ownSheetPaper';
import type { PriceListVersion } from '@/shared/schemas/priceList';
import { moneyOf } from './paperWords';

/** What stands around the figures of a list that are the maker's alone. */
export const ownListWords = {
  heading: 'For you alone',
  version: 'version',
  says: 'The least margin inside each break, by the way its orders are reckoned. None of it is on the paper.',
  table: 'Least margins',
} as const;

/** @returns what each price leaves where it leaves least. */
export function ownListTable(version: PriceListVersion, context: TextContext): OwnTable {
  const formatter = formatterFor(context);
  const money = moneyOf(version.currency, usableLocale(context.locale));
  return {
    columns: [
      { head: 'Item', isFigure: false },
      { head: 'Pieces', isFigure: false },
      { head: 'Listed', isFigure: false },
      { head: 'Least margin', isFigure: true },
      { head: 'At', isFigure: false },
    ],
    rows: version.items.flatMap(({ name, breaks, setUp }) =>
      breaks.map(({ from, to, each, leastAt, leastSize, leastMargin }) => [
        name,
        breakWords({ from, to }),
        setUp === null ? money(each) : `${money(setUp.start)} + ${money(setUp.each)} each`,
        formatter.share(leastMargin),
        `${formatter.count(leastAt, 'piece')}, ${leastSize}`,
      ]),
    ),
    total: null,
  };
}
