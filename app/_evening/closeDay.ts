import { wallAt } from '@/app/_clock/wallAt';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { IssueOutcome } from '@/app/_store/documentsState';
import { WAITING_ID } from '@/app/_store/happenedState';
import { closeBody, closeSeries } from '@/lib/stall/evening/closeBody';
import { type CloseStock, closedRows, closeMoves } from '@/lib/stall/evening/closeMoves';
import { strayRow } from '@/lib/stall/evening/strayRow';
import type { EveningOnScreen } from './eveningOnScreen';

/**
 * Closes a day: the paper and what it does to the stock, as one step to undo. A correction books what differs from
 * earlier closes of the day, on whichever device they were made.
 */
export function closeDay({
  workspace,
  fixed,
  evening,
  answers,
  today,
}: Pick<EveningOnScreen, 'workspace' | 'fixed' | 'evening' | 'answers' | 'today'>): Promise<IssueOutcome> {
  const { stallDayId, title } = evening.plan;
  const strays = closedRows({ goods: [], strays: evening.strays.map(strayRow) });
  return workspace.issue(`Close ${title}`, {
    kind: 'dayClose',
    about: { kind: 'stallDay', id: stallDayId },
    series: closeSeries(stallDayId),
    body: (number) => {
      const made = { number, issuedOn: today, planId: fixed.id, answers, clock: wallAt };
      const { tapsDigest, ...body } = closeBody(evening, made);
      // What waits gets another id once it is written.
      const isWaiting = evening.count.tapIds.some((id) => id.startsWith(WAITING_ID));
      return isWaiting || tapsDigest === undefined ? body : { ...body, tapsDigest };
    },
    notes: (paperId) =>
      closeMoves([...evening.rows, ...strays], closeStockOf(workspace, stallDayId), paperId).map((body) => ({
        kind: 'stockMove' as const,
        body,
      })),
  });
}

/** @returns what a close of a day is booked against */
export const closeStockOf = (
  { entries, papers, piles }: Pick<ReadyWorkspace, 'entries' | 'papers' | 'piles'>,
  stallDayId: string,
): CloseStock => ({
  ...{ stallDayId, piles, moves: entries.stockMove },
  closes: papers.dayClose.filter(({ body }) => body.stallDayId === stallDayId),
});
