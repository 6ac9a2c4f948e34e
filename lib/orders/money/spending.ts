import type { Happening, NotedOf, OrderHabits } from '@/lib/orders/orderFacts';
import { costOfSome } from '@/lib/stock/costOfSome';
import { stockKey } from '@/lib/stock/stockKey';
import { roundDecimal } from '@/shared/decimal';
import type { Expense } from '@/shared/schemas/orderEvents';

/** Money that went out for an order. */
export interface Spent {
  readonly entryId: string;
  readonly day: string;
  readonly what: string;
  readonly kind: Expense['kind'] | 'stock';
  /** Whole minor units; less than 0 where it came back. */
  readonly amountMinor: number;
}

interface Spending {
  readonly spent: readonly Spent[];
  /** Blanks and their freight: what a deposit is to cover. */
  readonly blanksMinor: number;
  /** Stock that the receipts noted already pay for; counted once. */
  readonly coveredMinor: number;
  /** Stock that moved for the order, and neither a price nor a receipt says what it cost. */
  readonly unpriced: readonly string[];
  /** Told, and never added. */
  readonly other: readonly { readonly id: string; readonly amountMinor: number; readonly currency: string }[];
}

/**
 * Expenses of an order, and stock that was bought or used for it. Used stock counts as far as more of it was used than
 * was bought for the order; where receipts of a kind are noted, they alone count for that kind.
 */
export function spending(
  happened: readonly Happening[],
  currency: string,
  { dayOf }: Pick<OrderHabits, 'dayOf'>,
): Spending {
  const expenses = happened.flatMap((one) => (one.kind === 'expense' ? [one] : []));
  const own = expenses.filter(({ body }) => body.currency === currency);
  const receipts = new Set(own.map(({ body }) => body.kind));
  const moves = happened.flatMap((one) => (one.kind === 'stockMove' ? [one] : []));
  const priced = beyondBought(moves).filter(({ move }) => move.body.unitCost?.currency === currency);
  const isCovered = ({ move }: Counting) => receipts.has(expenseKinds[move.body.item.kind]);
  const stock = priced.filter((one) => !isCovered(one));
  const ofBlanks = stock.filter(({ move }) => move.body.item.kind === 'blank');
  return {
    spent: [
      ...own.map(({ id, body }): Spent => {
        const { day, what, kind, amountMinor } = body;
        return { entryId: id, day, what, kind, amountMinor };
      }),
      ...stock.map((one): Spent => {
        const { id, at, body } = one.move;
        return { entryId: id, day: dayOf(at), what: body.cause, kind: 'stock', amountMinor: costOf(one) };
      }),
    ],
    blanksMinor:
      sumOf(own.filter(({ body }) => isForBlanks(body.kind)).map(({ body }) => body.amountMinor)) +
      sumOf(ofBlanks.map(costOf)),
    coveredMinor: sumOf(priced.filter(isCovered).map(costOf)),
    unpriced: moves.flatMap(({ id, body }) =>
      isUnpriced(body) && !receipts.has(expenseKinds[body.item.kind]) ? [id] : [],
    ),
    other: [
      ...expenses.flatMap(({ id, body }) =>
        body.currency === currency ? [] : [{ id, amountMinor: body.amountMinor, currency: body.currency }],
      ),
      ...beyondBought(moves).flatMap((one) => {
        const { unitCost } = one.move.body;
        return unitCost === null || unitCost.currency === currency
          ? []
          : [{ id: one.move.id, amountMinor: costOf(one), currency: unitCost.currency }];
      }),
    ],
  };
}

// Helpers

interface Counting {
  readonly move: NotedOf<'stockMove'>;
  /** How much of it counts as spent; less than 0 where it went back to where it was bought. */
  readonly quantity: number;
}

type StockKind = NotedOf<'stockMove'>['body']['item']['kind'];

/** Which receipts pay for which stock. */
const expenseKinds: Readonly<Record<StockKind, Expense['kind']>> = {
  blank: 'blanks',
  paper: 'paper',
  ink: 'ink',
  consumable: 'packaging',
  // What is finished was paid for as what it was made of.
  finished: 'other',
};

const isForBlanks = (kind: Expense['kind']): boolean => kind === 'blanks' || kind === 'freight';

function beyondBought(moves: readonly NotedOf<'stockMove'>[]): readonly Counting[] {
  const bought = new Map<string, number>();
  for (const { body } of moves) {
    // What went back to the supplier is here for nobody's use.
    if (body.cause !== 'bought' && body.cause !== 'returned') continue;
    const key = stockKey(body.item);
    bought.set(key, (bought.get(key) ?? 0) + body.quantity);
  }
  return moves.flatMap((move): readonly Counting[] => {
    const { body } = move;
    if (body.item.kind === 'finished') return [];
    if (body.cause === 'bought' || body.cause === 'returned') return [{ move, quantity: body.quantity }];
    if (body.cause !== 'used' && body.cause !== 'scrapped') return [];
    const key = stockKey(body.item);
    const left = bought.get(key) ?? 0;
    const used = -body.quantity;
    const fromBought = Math.min(Math.max(left, 0), Math.max(used, 0));
    bought.set(key, left - fromBought);
    return [{ move, quantity: used - fromBought }];
  });
}

const isUnpriced = ({ unitCost, item }: NotedOf<'stockMove'>['body']): boolean =>
  unitCost === null && item.kind !== 'finished';

const costOf = ({ move, quantity }: Counting): number =>
  move.body.unitCost === null ? 0 : roundDecimal(costOfSome(move.body.unitCost, quantity), 0, 'halfUp');

const sumOf = (amounts: readonly number[]): number => amounts.reduce((sum, amount) => sum + amount, 0);
