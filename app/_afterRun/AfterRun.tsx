import { Button } from '@/app/_controls/Button';
import { Card } from '@/app/_controls/Card';
import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { PageHead } from '@/app/_controls/PageHead';
import { saveBytes } from '@/app/_files/saveBytes';
import { ClockBehind } from '@/app/_keeping/ClockBehind';
import { LaterPart } from '@/app/_network/LaterPart';
import { lineWords, sparesWords, troubleWords } from '@/app/_words/afterRun/afterRunWords';
import { bridgeCsvWords, gapWords, lossWords } from '@/app/_words/afterRun/gapWords';
import { severalBegan } from '@/app/_words/making/runs/severalBegan';
import { minorMoney, minorWords } from '@/app/_words/orders/minorWords';
import { bridgeCsv } from '@/lib/exports/bridgeCsv';
import { largestLosses } from '@/lib/variances/largestLosses';
import styles from './AfterRun.module.css';
import { AfterRunHead } from './AfterRunHead';
import { type AfterRunOnScreen, stepBody } from './afterRunOnScreen';
import { BridgeTable } from './BridgeTable';
import { GapFormulas, MinutesTable } from './GapFormulas';
import { laterParts } from './laterParts';

/** What a run took, held against what it was to take: the way between both profits, and what it teaches. */
export function AfterRun({ on }: Readonly<{ on: AfterRunOnScreen }>) {
  const { workspace, figures, result, standard, formatter, locale } = on;
  const { facts, troubles, closed } = figures;
  const { runId, run } = facts;
  const { currency, sum } = result;
  const save = () =>
    saveBytes(
      `${run.name}, after the run.csv`,
      new TextEncoder().encode(bridgeCsv(result, bridgeCsvWords)),
      'text/csv',
    );
  return (
    <>
      <PageHead title={`${run.name}, after the run`} line={lineWords(facts, result, formatter, locale)} />
      <ClockBehind clockBehind={workspace.clockBehind} />
      <AfterRunHead {...{ result, formatter, locale }} />
      {result.spares.pieces > 0 && <p className={styles.quiet}>{sparesWords(result, formatter, locale)}</p>}
      {troubles.map((trouble) => (
        <p key={JSON.stringify(trouble)} className={styles.trouble}>
          {troubleWords(trouble, formatter, locale)}
        </p>
      ))}
      <LaterPart
        part={laterParts.causes}
        what="What nobody named"
        props={{ workspace, facts, frozen: standard.body }}
      />
      <LaterPart
        part={laterParts.changed}
        what="What changed since it began"
        props={{ workspace, frozen: standard.body }}
      />
      {facts.otherStandards.length > 0 && <p className={styles.trouble}>{severalBegan}</p>}
      <Card>
        <CardSection
          numeral={1}
          id="after-bridge"
          heading={`Where ${minorMoney(Math.abs(sum), currency, locale)} ${sum > 0 ? 'came from' : 'went'}`}
          answer={<Answer on={on} />}
        >
          <BridgeTable
            {...{ result, formatter, locale }}
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
        </CardSection>
        <LaterPart part={laterParts.took} what="What it took" props={{ on }} />
        <LaterPart part={laterParts.lessons} what="What runs teach" props={{ on }} />
        {closed.length > 0 && <LaterPart part={laterParts.runs} what="All runs" props={{ on }} />}
      </Card>
    </>
  );
}

// Helpers

/** The two largest of what cost something, price and use of one thing together. */
function Answer({ on: { result, locale } }: Readonly<{ on: AfterRunOnScreen }>) {
  const [most, next] = largestLosses(result);
  const words = (minor: number) => minorWords(minor, result.currency, locale);
  if (most === undefined) return <>Nothing cost more than planned</>;
  return (
    <>
      <strong>
        {lossWords[most.group]} took {words(most.minor)}
      </strong>
      {next !== undefined && `; ${lossWords[next.group].toLowerCase()} ${words(next.minor)}`}
    </>
  );
}
