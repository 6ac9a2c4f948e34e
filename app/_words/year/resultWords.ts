import type { AnswerWords } from '@/app/_words/docket/answerWords';
import type { Formatter } from '@/app/_words/formatter';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { DesignResult } from '@/lib/year/designResults';
import type { FairResult } from '@/lib/year/fairResults';
import type { YearStanding } from '@/lib/year/yearStanding';
import { toMinor } from '@/shared/money';

/** @returns what did best and worst, as far as that is known. */
export function resultsAnswer(
  { designs, fairs }: Pick<YearStanding, 'designs' | 'fairs'>,
  nameOf: (design: DesignResult) => string,
): AnswerWords {
  const known = designs.filter(({ left }) => left !== null);
  const paid = fairs.filter(({ payPerHour }) => payPerHour !== null);
  const [best, worst] = [known.at(0), known.length > 1 ? known.at(-1) : undefined];
  const [first, last] = [paid.at(0), paid.length > 1 ? paid.at(-1) : undefined];
  const fairWords =
    first === undefined
      ? ''
      : ` best fair ${first.title}${last === undefined ? '' : `, worst ${last.title}`}`;
  if (best === undefined)
    return {
      key: fairWords === '' ? noResult({ designs, fairs }) : `${fairWords.trim().replace(/^b/, 'B')}`,
    };
  const designWords = worst === undefined ? '' : `, worst ${nameOf(worst)}`;
  return {
    key: `Best design ${nameOf(best)}`,
    after: `${designWords}${fairWords === '' ? '' : `;${fairWords}`}`,
  };
}

const noResult = ({ designs, fairs }: Pick<YearStanding, 'designs' | 'fairs'>): string =>
  designs.length + fairs.length === 0 ? 'Nothing agreed or sold yet' : 'No result known yet';

/** @returns what a design left, and of how many. */
export function designFigure({ left, sold, pieces }: DesignResult, formatter: Formatter): string {
  const count = formatter.count(pieces, 'piece');
  return left === null
    ? `${count} for ${formatter.money(sold)}, cost not all known`
    : `${formatter.money(left)} left of ${count}`;
}

export const designNote =
  'Without tax and fees, less what making cost. An order is taken with the full cost of its quote, pay among it; a fair with what its goods cost, without the day itself; a shop by its statements.';

/** @returns what a fair came to and brought an hour, as its close says. */
export function fairFigure({ profit, payPerHour, currency }: FairResult, locale: string): string {
  if (profit === null || payPerHour === null) return 'result not known: a cost or a count is missing';
  const money = (amount: number) => minorMoney(toMinor(amount, currency), currency, locale);
  return `${money(payPerHour)} an hour, result ${money(profit)}`;
}

export const fairsNote = 'As each close says: its result after own pay, and the pay of its hours.';
