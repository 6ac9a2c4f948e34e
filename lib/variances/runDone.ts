import type { RunFacts, StandardPaper } from '@/lib/making/runFacts';
import type { RunDone } from '@/lib/stock/runMoves';
import { toMinor } from '@/shared/money';
import type { StandardWork } from '@/shared/schemas/making/runPapers';
import type { RunResult } from './runResult';
import { costOfOneMore } from './sparesOf';

/**
 * What the stock is to know of a run that is over: pieces as counted, and what somebody typed of the whole run. A
 * finished piece is worth what the standard says that making one cost, one beyond an order what one more takes. Of which
 * channels its ink was is not known.
 *
 * @param moves all that are in force
 */
export function runDone(
  facts: Pick<RunFacts, 'runId' | 'blankFaults' | 'sheetsPrinted'>,
  { body: standard }: Pick<StandardPaper, 'body'>,
  { made, actuals }: Pick<RunResult, 'made' | 'actuals'>,
  moves: RunDone['moves'],
): RunDone {
  const { runId, blankFaults, sheetsPrinted } = facts;
  const typed = ({ quantity, quantityFrom }: RunResult['actuals']['blanks']) =>
    quantityFrom === 'typed' ? quantity : null;
  return {
    ...{ runId, standard, blankFaults, sheetsPrinted, moves },
    pieces: made ?? [],
    told: { blanks: typed(actuals.blanks), sheets: typed(actuals.sheets), inkMl: typed(actuals.ink) },
    inkShares: [],
    costOf: ({ jobId, lineId, size }) => {
      const work = standard.works.find((one) => one.jobId === jobId);
      if (work === undefined) return null;
      const cost =
        work.orderId === null ? costOfOne(work, lineId, size) : costOfOneMore(standard, work, lineId, size);
      if (cost === null || cost < 0) return null;
      return { minor: toMinor(cost, standard.currency), currency: standard.currency };
    },
  };
}

// Helpers

/** Everything but blanks is shared over the pieces alike; a size carries its own blank. */
function costOfOne(work: StandardWork, lineId: string, size: string): number | null {
  const sizes = work.lines.flatMap((line) => line.sizes.map((one) => ({ lineId: line.lineId, ...one })));
  const pieces = sizes.reduce((sum, { wanted }) => sum + wanted, 0);
  const own = sizes.find((one) => one.lineId === lineId && one.size === size);
  if (own === undefined || pieces === 0) return null;
  const blanks = sizes.reduce((sum, one) => sum + one.wanted * one.blanksEach * one.price, 0);
  return (work.fullCost - blanks) / pieces + own.blanksEach * own.price;
}
