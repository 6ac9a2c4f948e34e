import { wallAt } from '@/app/_clock/wallAt';
import type { IssueOutcome } from '@/app/_store/documentsState';
import { closeBody, closeSeries } from '@/lib/stall/evening/closeBody';
import { closeMoves, movesOfCloses } from '@/lib/stall/evening/closeMoves';
import { foldStock } from '@/lib/stock/foldStock';
import type { EveningOnScreen } from './eveningOnScreen';

/**
 * Closes a day: the paper and what it does to the stock, as one step to undo. What earlier closes of the day did to the
 * stock, on whichever device, is taken back in the same step.
 */
export function closeDay({
  workspace,
  fixed,
  evening,
  answers,
  today,
}: Pick<EveningOnScreen, 'workspace' | 'fixed' | 'evening' | 'answers' | 'today'>): Promise<IssueOutcome> {
  const { stallDayId, title } = evening.plan;
  const { stockMove, stockTransfer, stockCount } = workspace.entries;
  const closes = workspace.papers.dayClose.filter(({ body }) => body.stallDayId === stallDayId);
  const before = movesOfCloses(
    stockMove,
    closes.map(({ id }) => id),
  );
  const rest = stockMove.filter((move) => !before.includes(move));
  const piles = foldStock([...rest, ...stockTransfer, ...stockCount]);
  return workspace.issue(`Close ${title}`, {
    kind: 'dayClose',
    about: { kind: 'stallDay', id: stallDayId },
    series: closeSeries(stallDayId),
    body: (number) =>
      closeBody(evening, { number, issuedOn: today, planId: fixed.id, answers, clock: wallAt }),
    notes: (paperId) => [
      ...before.map(({ id }) => ({ kind: 'takeBack' as const, body: { entryId: id } })),
      ...closeMoves(evening.rows, piles, paperId).map((body) => ({ kind: 'stockMove' as const, body })),
    ],
  });
}
