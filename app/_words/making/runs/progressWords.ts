import type { Formatter } from '@/app/_words/formatter';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { turnName } from '@/app/_words/press/doneWords';
import type { PressedRun } from '@/lib/pressing/foldPressings';
import { pressedSummary } from '@/lib/pressing/pressedSummary';
import type { RunResult } from '@/lib/variances/runResult';
import type { RunAnswerLine } from './runAnswerWords';
import { runTable } from './runTable';

/**
 * How far the pressing is.
 *
 * @param doneAt when the print that is pressed will be done, as a time; null where nobody is at the press
 * @example '14 of 37 good' ', Back picture; 2 lost; this print done about 20:04'
 */
export function progressWords(run: PressedRun, doneAt: string | null, { number }: Formatter): RunAnswerLine {
  const { good, lost } = pressedSummary(run);
  const { current, turns } = run;
  if (current === null)
    return { key: runTable.allPressed, after: `: ${runTable.goodLost(number(good), number(lost))}` };
  return {
    key: runTable.goodOf(number(current.good), number(current.wanted)),
    after: [
      `, ${turnName(current, turns)}`,
      ...(lost > 0 ? [`${number(lost)} lost`] : []),
      ...(doneAt === null ? [] : [runTable.doneAbout(doneAt)]),
    ].join('; '),
  };
}

/** What came of a run that is closed: what it left, and of how many pieces. */
export function closedWords(
  result: RunResult,
  run: PressedRun,
  { number }: Formatter,
  locale: string,
): RunAnswerLine {
  const { good, lost } = pressedSummary(run);
  const pieces = run.pressed.length === 0 ? runTable.noPiece : runTable.goodLost(number(good), number(lost));
  const { bridge, currency } = result;
  if (bridge === null) return { key: pieces, after: `; ${runTable.noPrice}` };
  const money = (minor: number) => minorMoney(minor, currency, locale);
  return {
    key: runTable.profit(money(bridge.to)),
    after: `${runTable.profitOf(money(bridge.from))}; ${pieces}`,
  };
}
