import type { Entry } from '@/shared/schemas/happened';
import type {
  StockCount,
  StockGrade,
  StockItem,
  StockMove,
  StockPlace,
  StockTransfer,
} from '@/shared/schemas/stock';

/** What the stock is worked out from. */
export type StockEntry =
  | Entry<'stockMove', StockMove>
  | Entry<'stockTransfer', StockTransfer>
  | Entry<'stockCount', StockCount>;

/** An item at a place, in a grade. */
export interface Lying {
  readonly item: StockItem;
  readonly place: StockPlace;
  readonly grade: StockGrade;
}

/** What one entry says of one thing that lies somewhere. */
export type Posting = Lying &
  ({ readonly says: 'more'; readonly by: number } | { readonly says: 'count'; readonly is: number });

/** @returns what an entry says, end by end. */
export function postingsOf(entry: StockEntry): readonly Posting[] {
  switch (entry.kind) {
    case 'stockMove': {
      const { item, place, grade, quantity } = entry.body;
      return [{ item, place, grade, says: 'more', by: quantity }];
    }
    case 'stockTransfer': {
      const { from, to, quantity } = entry.body;
      return [
        { ...from, says: 'more', by: -quantity },
        { ...to, says: 'more', by: quantity },
      ];
    }
    case 'stockCount': {
      const { item, place, grade, quantity } = entry.body;
      return [{ item, place, grade, says: 'count', is: quantity }];
    }
    default:
      return entry satisfies never;
  }
}
