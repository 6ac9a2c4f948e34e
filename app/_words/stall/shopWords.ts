import type { AnswerWords } from '@/app/_words/docket/answerWords';
import type { Formatter } from '@/app/_words/formatter';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { SettledStatement, ShelfGoods, ShopStanding, shopLate } from '@/lib/stall/shops/shopStanding';
import type { ShopTerms, StatementDue } from '@/lib/stall/shops/statementDue';
import type { ShopStatement } from '@/shared/schemas/stallEvents';
import type { StockGrade } from '@/shared/schemas/stock';

/** @example 'Fern shirt, M' */
export const goodsName = (line: string | null, size: string): string =>
  [line ?? 'A design that is not here', size].filter((part) => part !== '').join(', ');

/** @example 'Fern shirt, M, second grade' */
export const gradedName = (name: string, grade: StockGrade): string =>
  grade === 'second' ? `${name}, second grade` : name;

/** @returns what a shop asks for one of some goods. */
export const eachWords = ({ each }: Pick<ShelfGoods, 'each'>, locale: string): string =>
  each === null ? 'no price agreed' : `${minorMoney(each.minor, each.currency, locale)} each`;

/** Where the price comes from that a shop is to ask, before one is typed. */
export interface PriceBegun {
  /** Currency units. */
  readonly price: number;
  readonly from: 'shop' | 'plan' | 'list';
  /** Of the paper; '' for the shop. */
  readonly title: string;
}

/** @returns what stands beside the price agreed; of null where it was typed or nothing is known. */
export function agreedHint(begun: PriceBegun | null): string {
  if (begun === null) return 'Left empty it is not agreed yet; the statement asks again.';
  const { from, title } = begun;
  switch (from) {
    case 'shop':
      return 'As before at this shop.';
    case 'plan':
      return `As planned for ${title}. Change it to what was agreed.`;
    case 'list':
      return `As on the list ${title}. Change it to what was agreed.`;
    default:
      return from satisfies never;
  }
}

/** @returns what lies there and what it is worth, in one line. */
export function shelfAnswer(
  { pieces, worth, unpriced }: Pick<ShopStanding, 'pieces' | 'worth' | 'unpriced'>,
  formatter: Formatter,
  locale: string,
): AnswerWords {
  if (pieces === 0) return { key: 'Nothing', after: ' lies there' };
  const after =
    unpriced === pieces
      ? ', at no price told yet'
      : `, ${sumsWords(worth, locale)} at its last prices${unpriced > 0 ? ` without ${formatter.number(unpriced, 0)} that have none` : ''}`;
  return { key: formatter.count(pieces, 'piece'), after };
}

/** @returns what is owed, in one line. */
export function dueAnswer(
  { due, statements }: Pick<ShopStanding, 'due' | 'statements'>,
  locale: string,
): AnswerWords {
  if (statements.length === 0 && due.length === 0) return { key: 'No statement', after: ' yet' };
  if (due.length === 0) return { key: 'Settled', after: '' };
  const owed = due.filter(({ minor }) => minor > 0);
  const over = due.filter(({ minor }) => minor < 0);
  const told = (some: typeof due) => sumsWords(some, locale);
  if (owed.length === 0) return { key: told(over), after: ' paid more than was due' };
  return {
    key: told(owed),
    after: over.length === 0 ? ' due' : ` due, and ${told(over)} paid more than was due`,
  };
}

/** @returns what the shop is late with, or to be fetched; nothing where it keeps its days. */
export function lateLines(
  { statement, fetch }: ReturnType<typeof shopLate>,
  formatter: Formatter,
): readonly string[] {
  return [
    ...(statement !== null && statement > 0
      ? [`Its statement is ${formatter.count(statement, 'day')} late. Ask for it, or count what lies there.`]
      : []),
    ...(fetch !== null && fetch > 0
      ? [
          `The goods were to be fetched ${formatter.count(fetch, 'day')} ago. What is left longer may be taken for the shop’s. Bring them home, or agree on another day.`,
        ]
      : []),
  ];
}

/** @returns what a share is a share of, where there is tax to tell. */
export const basePriceWords = (
  base: ShopTerms['commissionBase'],
  taxMode: ShopTerms['taxMode'] | null,
): string =>
  taxMode === 'none' ? 'its price' : base === 'withTax' ? 'its price with tax' : 'its price without tax';

/** @returns what a statement comes to while it is typed. */
export function statementTold(
  { grossMinor, commissionMinor, dueMinor }: StatementDue,
  { commissionShare, commissionBase, taxMode, currency }: ShopTerms,
  formatter: Formatter,
  locale: string,
): string {
  const money = (minor: number) => minorMoney(minor, currency, locale);
  const kept = `${formatter.share(commissionShare)} of ${basePriceWords(commissionBase, taxMode)}`;
  return `${money(grossMinor)} less ${money(commissionMinor)} that the shop keeps, ${kept}: ${money(dueMinor)} due.`;
}

/** @returns what a statement says, in one line: “2 pieces sold, 1 missing; the shop kept 40% of its price without tax”. */
export function statementLine(
  { rows, commissionShare, commissionBase }: ShopStatement,
  formatter: Formatter,
): string {
  const sum = (of: 'sold' | 'missing') => rows.reduce((all, row) => all + row[of], 0);
  const missing = sum('missing') > 0 ? `, ${formatter.number(sum('missing'), 0)} missing` : '';
  const kept = `${formatter.share(commissionShare)} of ${basePriceWords(commissionBase, null)}`;
  return `${formatter.count(sum('sold'), 'piece')} sold${missing}; it keeps ${kept}`;
}

/** @returns how far a statement is paid. */
export function settledWords(
  { state, openMinor, paidMinor, entry: { body } }: SettledStatement,
  locale: string,
): string {
  const money = (minor: number) => minorMoney(minor, body.currency, locale);
  switch (state) {
    case 'open':
      return body.dueMinor === 0 ? 'nothing due' : 'not paid';
    case 'part':
      return `${money(paidMinor)} paid, ${money(openMinor)} open`;
    case 'paid':
      return body.dueMinor === 0 ? 'nothing due' : 'paid';
    case 'over':
      return `paid, and ${money(-openMinor)} more than was due`;
    default:
      return state satisfies never;
  }
}

/** @returns what payments mean whose statement is not here, and what to do. */
export function creditWords(credits: ShopStanding['credits'], locale: string): string {
  const sums = credits.map(({ body }) => minorMoney(body.amountMinor, body.currency, locale));
  return `${sums.join(' and ')} paid for a statement that is not here any more: it counts towards what the shop owes next. Take it back if it never came.`;
}

/** Why a shop cannot be called so. */
export const nameTaken = (name: string): string =>
  `A shop here is or was called “${name}”: its goods would lie among these. Choose another name.`;

/** Why a statement cannot be reckoned yet. */
export const termsMissing = {
  channel: 'Choose the way of selling first, under Terms: it says how tax stands to the price.',
  tax: 'How tax is handled there is not set. Set it for the way of selling, in the workshop.',
  commission: 'What the shop keeps is not set. Set it under Terms: nothing can be due before.',
} as const;

/** What a shop is said to have sold comes to more than can be kept exact. */
export const statementBeyond =
  'It comes to hundreds of millions, which cannot be kept exact to the coin. Look for a price or a number with digits too many.';

// Helpers

const sumsWords = (sums: ShopStanding['due'], locale: string): string =>
  sums.map(({ currency, minor }) => minorMoney(Math.abs(minor), currency, locale)).join(' and ');
