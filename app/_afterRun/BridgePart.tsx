import { Button } from '@/app/_controls/Button';
import { FoldRow } from '@/app/_controls/FoldRow';
import { saveBytes } from '@/app/_files/saveBytes';
import { sinceClosedWords } from '@/app/_words/afterRun/afterRunWords';
import { bridgeCsvWords, gapWords } from '@/app/_words/afterRun/gapWords';
import { bridgeCsv } from '@/lib/exports/bridgeCsv';
import { type AfterRunOnScreen, stepBody } from './afterRunOnScreen';
import { BridgeTable } from './BridgeTable';
import { GapFormulas, MinutesTable } from './GapFormulas';

/** The bridge, with its formulas and the minutes behind it. */
export function BridgePart({ on }: Readonly<{ on: AfterRunOnScreen }>) {
  const { workspace, figures, result, formatter, locale } = on;
  const { runId, run, isClosed } = figures.facts;
  const { since } = figures;
  const save = () =>
    saveBytes(
      `${run.name}, after the run.csv`,
      new TextEncoder().encode(bridgeCsv(result, bridgeCsvWords)),
      'text/csv',
    );
  return (
    <>
      {since !== null && since.deliveries + since.amounts > 0 && <p>{sinceClosedWords(since, formatter)}</p>}
      <BridgeTable
        {...{ result, formatter, locale, isClosed }}
        onCause={(line, cause) =>
          workspace.note(`Cause of ${gapWords[line]}`, [
            { kind: 'runStep', body: stepBody(on, { what: 'cause', line, cause, note: '' }) },
          ])
        }
      />
      <FoldRow
        place={`after ${runId}`}
        folds={[
          {
            id: 'formulas',
            name: 'Formulas of each gap',
            body: () => <GapFormulas {...{ result, formatter }} />,
          },
          {
            id: 'minutes',
            name: 'Minutes by element',
            body: () => <MinutesTable {...{ result, locale }} />,
          },
        ]}
        after={
          <Button kind="quiet" onPress={save}>
            Save as a table
          </Button>
        }
      />
    </>
  );
}
