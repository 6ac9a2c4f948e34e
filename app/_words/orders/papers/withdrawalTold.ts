import { minorMoney } from '@/app/_words/orders/minorWords';
import { type Bill, billsOf, isOfGoods } from '@/lib/orders/bills';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import type { OrderPaper } from '@/lib/orders/orderFacts';
import { paperSaid } from './outWords';

/** @returns what else counts no more once a paper is withdrawn; nothing where only the paper itself goes. */
export function withdrawalTold(
  paper: OrderPaper,
  { facts, standing }: Pick<BoardOrder, 'facts' | 'standing'>,
  locale: string,
): readonly string[] {
  const { receivedMinor, currency } = standing.money;
  const came =
    receivedMinor > 0 ? [`${minorMoney(receivedMinor, currency, locale)} that came stays received.`] : [];
  if (paper.kind === 'quote') {
    if (standing.acceptance?.paperId !== paper.id) return [];
    return [
      'The customer said yes to this quote. The yes counts no more with it, and neither do the total and the deposit.',
      ...came,
    ];
  }
  const bills = billsOf(facts.happened);
  const bill = bills.find((one) => one.paper.id === paper.id);
  if (bill === undefined) return [];
  const credits = bill.credits.map(
    ({ kind, number, body }) =>
      `What ${paperSaid(kind, number, body)} gave back of it counts no more either.`,
  );
  return credits.length + came.length === 0 ? [] : [...credits, ...came, owedThen(bill, bills)];
}

// Helpers

function owedThen(bill: Bill, bills: readonly Bill[]): string {
  if (!isOfGoods(bill)) return 'Its changes are owed all the same, until another invoice asks for them.';
  return bills.some((other) => other !== bill && isOfGoods(other))
    ? 'What is owed is then what the other invoice asks for, and what was changed beside it.'
    : 'What is owed is then what was agreed, until another invoice goes out.';
}
