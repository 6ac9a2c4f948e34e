import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import { runTable } from '@/app/_words/making/runs/runTable';
import { nearDayWords } from '@/app/_words/orders/nearDayWords';

/** @returns how a run stands: put away, closed, begun and when. */
export function stateWords({ facts, run, today, locale }: RunOnScreen): string {
  const { isBegun, isClosed, standard, steps } = facts;
  const begun = standard?.body.issuedOn ?? steps.find(({ body }) => body.step.what === 'begun')?.body.day;
  return [
    run.archivedOn === null ? null : runTable.isPutAway,
    isClosed ? runTable.isClosed : null,
    !isBegun
      ? runTable.toBegin
      : begun === undefined
        ? null
        : runTable.begun(nearDayWords(begun, today, locale)),
  ]
    .filter((part) => part !== null)
    .join(' ');
}
