import type { TextContext } from '@/app/_words/formatter';
import { minorInRow } from '@/app/_words/orders/minorWords';
import { daysWords, nearDayWords } from '@/app/_words/orders/nearDayWords';
import type { Purse } from '@/lib/orders/board/purse';

/** A figure of the money card with what it is. */
interface PurseFigure {
  readonly key: 'late' | 'asked' | 'held' | 'tooMuch' | 'bank' | 'worst';
  readonly figure: string;
  readonly line: string;
}

/** @returns what is to come and what is there, its bold beginning and the rest. */
export function purseAnswer(
  { currency, toComeMinor, inHandMinor }: Purse,
  context: TextContext,
): readonly [string, string] {
  const said = (minor: number) => minorInRow(minor, currency, context);
  return [
    toComeMinor === 0 ? 'Nothing to come,' : `${said(toComeMinor)} to come,`,
    inHandMinor === 0 ? 'nothing in hand' : `${said(inHandMinor)} in hand`,
  ];
}

/**
 * The figures under it; what is nothing is left out.
 *
 * @param nameOf what an order is called
 */
export function purseFigures(
  { currency, late, asked, held, tooMuch, toReachBankMinor, exposure: { lowest } }: Purse,
  nameOf: (orderId: string) => string,
  today: string,
  context: TextContext,
): readonly PurseFigure[] {
  const said = (minor: number) => minorInRow(minor, currency, context);
  const sum = (list: readonly { readonly dueMinor: number }[]) =>
    list.reduce((total, { dueMinor }) => total + dueMinor, 0);
  const who = (list: readonly { readonly orderId: string }[]) => {
    const [first, ...others] = list;
    if (first === undefined) return '';
    return others.length === 0 ? nameOf(first.orderId) : `${list.length} orders`;
  };
  const longest = Math.max(0, ...late.map(({ days }) => days));
  return [
    ...(late.length === 0
      ? []
      : [
          {
            key: 'late' as const,
            figure: said(sum(late)),
            line: `late by ${daysWords(longest)}, ${who(late)}`,
          },
        ]),
    ...(asked.length === 0
      ? []
      : [{ key: 'asked' as const, figure: said(sum(asked)), line: `asked for, ${who(asked)}` }]),
    ...(held.length === 0
      ? []
      : [
          {
            key: 'held' as const,
            figure: said(held.reduce((total, { heldMinor }) => total + heldMinor, 0)),
            line: `held of ${who(held)}, called off: give it back or bill it`,
          },
        ]),
    ...(tooMuch.length === 0
      ? []
      : [
          {
            key: 'tooMuch' as const,
            figure: said(tooMuch.reduce((total, { tooMuchMinor }) => total + tooMuchMinor, 0)),
            line: `too much came of ${who(tooMuch)}: give it back`,
          },
        ]),
    ...(toReachBankMinor === 0
      ? []
      : [{ key: 'bank' as const, figure: said(toReachBankMinor), line: 'paid, not at the bank yet' }]),
    ...(lowest === null || lowest.balanceMinor >= 0
      ? []
      : [
          {
            key: 'worst' as const,
            figure: said(-lowest.balanceMinor),
            line: `of your own in it at worst, ${nearDayWords(lowest.day, today, context.locale)}`,
          },
        ]),
  ];
}
