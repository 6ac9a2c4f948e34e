import type { AnswerWords } from '@/app/_words/docket/answerWords';
import type { Formatter } from '@/app/_words/formatter';
import { listed } from '@/app/_words/listed';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { StockReason } from '@/lib/stall/evening/eveningAnswers';
import type { Evening } from '@/lib/stall/evening/reconcile';
import { type StockRow, shouldBeLeft } from '@/lib/stall/evening/stockRows';
import { goodsName } from './goodsName';

export const stockReasonWords: Readonly<Record<StockReason, string>> = {
  damaged: 'Spoiled',
  given: 'Given',
  soldNotTapped: 'Sold, not tapped',
  tappedTwice: 'Tapped twice',
  refillNotTapped: 'Put out later, not tapped',
  notKnown: 'Not known',
};

export function stockAnswer({ rows, plan, soldFrom }: Evening, { count }: Formatter): AnswerWords {
  const open = rows.filter(({ counted }) => counted === null);
  const left = rows.reduce((sum, row) => sum + (row.left ?? 0), 0);
  if (soldFrom === 'count' && open.length > 0)
    return { key: `Count ${count(open.length, 'size')}`, after: ': what is left says what was sold' };
  if (open.length === rows.length) {
    const should = rows.reduce((sum, row) => sum + shouldBeLeft(row), 0);
    return { key: `${should}`, after: ' should be left' };
  }
  const differing = rows.filter(({ difference }) => difference !== null && difference !== 0);
  const [first] = differing.filter(({ reason }) => reason === null);
  if (first === undefined && differing.length > 0)
    return { key: `${left} left`, after: `, ${listed(differing.map((row) => explainedWords(row, plan)))}` };
  if (first === undefined) {
    const rest = open.length > 0 ? `, ${count(open.length, 'size')} not counted` : ', as it should be';
    return { key: `${left} left`, after: rest };
  }
  const others = differing.filter(({ reason }) => reason === null).length - 1;
  const more = others > 0 ? ` and ${count(others, 'size')} more` : '';
  // Below 0 of goods of which more went than was brought: what is too many is told against just that.
  const reckoned = rows.reduce((sum, row) => sum + (row.reckoned ?? shouldBeLeft(row)), 0);
  return {
    key: `${left} counted, ${reckoned} should be:`,
    after: ` ${differsWords(first, goodsName(plan, first.goods))}${more}`,
  };
}

/** “1 Fern M is missing”. */
function differsWords({ difference }: StockRow, name: string): string {
  const pieces = Math.abs(difference ?? 0);
  return `${pieces} ${name} ${pieces === 1 ? 'is' : 'are'} ${(difference ?? 0) < 0 ? 'missing' : 'too many'}`;
}

/** “1 Fern M sold, not tapped”. */
const explainedWords = ({ difference, reason, goods }: StockRow, plan: Evening['plan']): string =>
  `${Math.abs(difference ?? 0)} ${goodsName(plan, goods)} ${reason === null ? '' : stockReasonWords[reason].toLowerCase()}`;

/** “Fern M: 3 should be, 2 counted.” More than that brings nothing before somebody says where from. */
export function rowDiffers({ plan }: Evening, row: StockRow): string {
  const { found } = row;
  const told = `${goodsName(plan, row.goods)}: ${heldWords(row)}, ${row.counted ?? 0} counted.`;
  if (found === 0) return told;
  const [are, them] = found === 1 ? ['is', 'it'] : ['are', 'them'];
  return `${told} Look whether the count is right, else say where ${found} more ${are} from: until then the result gains nothing by ${them}.`;
}

/** What a count is held against. */
function heldWords({ sold, untapped, given, damaged, reckoned, counted, difference }: StockRow): string {
  if (reckoned === null) return `${(counted ?? 0) - (difference ?? 0)} can be left`;
  const went = sold - untapped + given + damaged;
  const brought = reckoned + went;
  if (reckoned < 0) return `${went} went of ${brought} brought`;
  return (counted ?? 0) > brought ? `${reckoned} should be of ${brought} brought` : `${reckoned} should be`;
}

/** How sales were paid that no tap told. */
export const paidChoices = [
  { value: 'cash', label: 'In cash' },
  { value: 'card', label: 'By card' },
] as const;

export const paidLabel = ({ plan }: Evening, { goods }: StockRow): string =>
  `How ${goodsName(plan, goods)} was paid`;

/** What a sale that the count told does to the money: into what it is booked. Null where it does nothing. */
export function bookedWords(
  { plan }: Evening,
  row: StockRow,
  isReaderTold: boolean,
  locale: string,
): string | null {
  if (row.untapped === 0) return null;
  const money = minorMoney(Math.abs(row.untapped * row.untappedEachMinor), plan.currency, locale);
  const [done, more] = row.untapped > 0 ? ['is added to', 'more'] : ['is taken off', 'less'];
  if (isReaderTold) return `${money} ${done} the takings; the reader’s total says how it was paid.`;
  const where = row.untappedPay === 'cash' ? 'be in the tin' : 'be on the reader';
  return `${money} ${done} the takings: so much ${more} should ${where}.`;
}

/** More was noted than was brought: what it would cause, and how to mend it. */
export const overdrawnWords = ({ plan }: Evening, { goods, brought, reckoned }: StockRow): string =>
  `${goodsName(plan, goods)}: ${brought - (reckoned ?? 0)} went, ${brought} ${brought === 1 ? 'was' : 'were'} brought. One was tapped twice or more came along: count what is left and say which, or its stock is wrong.`;

/** Spoiled and kept, on the day or before: they come home in their own grade, where no plan takes them for first. Null where there are none. */
export function secondsHome({ rows, plan }: Evening, { count, number }: Formatter): string | null {
  const seconds = rows.reduce((sum, row) => sum + row.seconds + row.keptBrought - row.keptSold, 0);
  if (seconds === 0) return null;
  const price =
    plan.secondsShare === undefined
      ? 'no price was set for them'
      : `the price of the day was ${number(plan.secondsShare * 100, 0)} % of a first`;
  return `${count(seconds, 'second')} ${seconds === 1 ? 'goes' : 'go'} home in the grade of seconds; ${price}.`;
}

/** Sold, but in no plan that is here. */
export function straysWords({ strays }: Evening, { count }: Formatter): string {
  const sold = strays.reduce((sum, goods) => sum + goods.sold, 0);
  return `${count(sold, 'piece')} of ${count(strays.length, 'size')} that no plan here has: they leave the stock and their money is in the takings, but their cost is in no sum here. Fix a plan with them first, or the profit is told too high.`;
}
