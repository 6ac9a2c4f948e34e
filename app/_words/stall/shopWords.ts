import type { AnswerWords } from '@/app/_words/docket/answerWords';
import type { Formatter } from '@/app/_words/formatter';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { SettledStatement, ShopStanding, shopLate } from '@/lib/stall/shops/shopStanding';
import type { StatementDue } from '@/lib/stall/shops/statementDue';

/** @example 'Fern shirt, M' */
export const goodsName = (line: string | null, size: string): string =>
  [line ?? 'A design that is not here', size].filter((part) => part !== '').join(', ');

/** @returns what lies there and what it is worth, in one line. */
export function shelfAnswer(
  { pieces, worthMinor, unpriced }: Pick<ShopStanding, 'pieces' | 'worthMinor' | 'unpriced'>,
  currency: string,
  formatter: Formatter,
  locale: string,
): AnswerWords {
  if (pieces === 0) return { key: 'Nothing', after: ' lies there' };
  const worth =
    unpriced === pieces
      ? ', at no price told yet'
      : `, ${minorMoney(worthMinor, currency, locale)} at its last prices${unpriced > 0 ? ` without ${formatter.number(unpriced, 0)} that have none` : ''}`;
  return { key: formatter.count(pieces, 'piece'), after: worth };
}

/** @returns what is owed, in one line. */
export function dueAnswer(
  { due, statements }: Pick<ShopStanding, 'due' | 'statements'>,
  locale: string,
): AnswerWords {
  if (statements.length === 0) return { key: 'No statement', after: ' yet' };
  if (due.length === 0) return { key: 'Settled', after: '' };
  const owed = due.filter(({ minor }) => minor > 0);
  const over = due.filter(({ minor }) => minor < 0);
  const told = (some: typeof due) =>
    some.map(({ currency, minor }) => minorMoney(Math.abs(minor), currency, locale)).join(' and ');
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

/** @returns what a statement comes to while it is typed. */
export const statementTold = (
  { grossMinor, commissionMinor, dueMinor }: StatementDue,
  currency: string,
  locale: string,
): string =>
  `${minorMoney(grossMinor, currency, locale)} less ${minorMoney(commissionMinor, currency, locale)} that the shop keeps: ${minorMoney(dueMinor, currency, locale)} due.`;

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

/** Why a statement cannot be reckoned yet. */
export const termsMissing = {
  channel: 'Choose the way of selling first, under Terms: it says how tax stands to the price.',
  tax: 'How tax is handled there is not set. Set it for the way of selling, in the workshop.',
  commission: 'What the shop keeps is not set. Set it under Terms: nothing can be due before.',
} as const;

/** What a shop is said to have sold comes to more than can be kept exact. */
export const statementBeyond =
  'It comes to hundreds of millions, which cannot be kept exact to the coin. Look for a price or a number with digits too many.';
