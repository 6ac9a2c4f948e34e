import type { RunFacts, StandardPaper } from '@/lib/making/runFacts';
import type { RunDone } from '@/lib/stock/runMoves';
import { boughtInCost } from './boughtInCost';
import type { RunResult } from './runResult';

/**
 * What the stock is to know of a run that is over: pieces as counted, and what somebody typed of the whole run. A
 * finished piece is worth what of it was bought by the standard, whoever it is for; a second no more than a first. Of which
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
    costOf: (goods) => {
      const minor = boughtInCost(standard, goods);
      return minor === null ? null : { minor, currency: standard.currency };
    },
  };
}
