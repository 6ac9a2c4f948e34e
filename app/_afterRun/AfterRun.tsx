import { Button } from '@/app/_controls/Button';
import { Card } from '@/app/_controls/Card';
import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { PageHead } from '@/app/_controls/PageHead';
import { saveBytes } from '@/app/_files/saveBytes';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { troubleWords } from '@/app/_words/afterRun/afterRunWords';
import { causeWords, gapWords } from '@/app/_words/afterRun/gapWords';
import { formatterFor } from '@/app/_words/formatter';
import { minorMoney, minorWords } from '@/app/_words/orders/minorWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { StandardPaper } from '@/lib/making/runFacts';
import { bridgeCsv } from '@/lib/variances/bridgeCsv';
import type { RunResult } from '@/lib/variances/runResult';
import type { RunStep } from '@/shared/schemas/runEvents';
import { ActualsForm } from './ActualsForm';
import styles from './AfterRun.module.css';
import { AfterRunHead } from './AfterRunHead';
import { BridgeTable } from './BridgeTable';
import { GapFormulas, MinutesTable } from './GapFormulas';
import { LessonRows } from './LessonRows';
import { OverRuns } from './OverRuns';
import { TimeForm } from './TimeForm';
import type { AfterRunFigures } from './useAfterRun';

type AfterRunProps = Readonly<{
  workspace: ReadyWorkspace;
  figures: AfterRunFigures;
  result: RunResult;
  standard: StandardPaper;
}>;

/** What a run took, held against what it was to take: the way between both profits, and what it teaches. */
export function AfterRun({ workspace, figures, result, standard }: AfterRunProps) {
  const { facts, today, troubles, lessons, closed } = figures;
  const { workshop } = workspace;
  const { runId, run, isClosed } = facts;
  const { currency } = result;
  const locale = usableLocale(workshop.locale);
  const formatter = formatterFor({ ...workshop, currency });
  const lastClosed = facts.steps.findLast(({ body }) => body.step.what === 'closed');
  const step = (label: string, of: RunStep['step']) =>
    workspace.note(label, [
      { kind: 'runStep', body: { runId, standardId: standard.id, day: today, step: of } },
    ]);
  const sum = (of: 'good' | 'scrap') => (result.made ?? []).reduce((all, one) => all + one[of], 0);
  const save = () =>
    saveBytes(
      `${run.name}, after the run.csv`,
      new TextEncoder().encode(
        bridgeCsv(
          result,
          (line) => gapWords[line],
          (cause) => causeWords[cause],
        ),
      ),
      'text/csv',
    );
  const line = [
    result.made === null ? 'No piece is noted' : `${sum('good')} good, ${sum('scrap')} scrapped`,
    `${formatter.hours(result.actuals.labour.quantity)}${
      result.actuals.labour.quantityFrom === 'standard' ? ' as planned, none noted' : ''
    }`,
    isClosed && lastClosed !== undefined ? `closed ${formatter.day(lastClosed.body.day)}` : 'not closed yet',
  ].join('; ');
  return (
    <>
      <PageHead title={`${run.name}, after the run`} line={line} />
      <AfterRunHead {...{ result, formatter, locale }} />
      {troubles.map((trouble) => (
        <p key={JSON.stringify(trouble)} className={styles.trouble}>
          {troubleWords(trouble, locale)}
        </p>
      ))}
      {facts.otherStandards.length > 0 && (
        <p className={styles.trouble}>
          Two devices began this run, each with figures of its own. The newest count; what both noted counts.
        </p>
      )}
      <Card>
        <CardSection
          numeral={1}
          id="after-bridge"
          heading={`Where ${minorMoney(Math.abs(result.sum), currency, locale)} ${result.sum > 0 ? 'came from' : 'went'}`}
          answer={<Answer {...{ result, locale }} />}
        >
          <BridgeTable
            {...{ result, locale }}
            onCause={(gap, cause) =>
              step(`Cause of ${gapWords[gap]}`, { what: 'cause', line: gap, cause, note: '' })
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
        <CardSection numeral={2} id="after-actuals" heading="What it took">
          <ActualsForm {...{ workspace, runId, currency, today, result }} />
          <TimeForm {...{ workspace, runId, today, locale }} hours={facts.hours} />
          <Button
            kind={isClosed ? 'quiet' : 'strong'}
            onPress={() =>
              void (isClosed
                ? step('Open the run again', { what: 'reopened' })
                : step('Close the run', { what: 'closed', note: '' }))
            }
          >
            {isClosed ? 'Open the run again' : 'Close the run'}
          </Button>
        </CardSection>
        <CardSection numeral={3} id="after-lessons" heading="What runs teach">
          <LessonRows
            {...{ workspace, lessons, today, formatter }}
            reversed={facts.pressings.filter(({ body }) => body.fault === 'reversed').length}
          />
        </CardSection>
        {closed.length > 1 && (
          <CardSection numeral={4} id="after-runs" heading="Over all runs">
            <OverRuns {...{ closed, formatter, locale }} />
          </CardSection>
        )}
      </Card>
    </>
  );
}

// Helpers

/** The largest of what cost something, with its share. */
function Answer({ result, locale }: Readonly<{ result: RunResult; locale: string }>) {
  const worst = result.bars.toSorted((one, other) => one.minor - other.minor)[0];
  if (worst === undefined || worst.minor >= 0) return <>Nothing cost more than planned</>;
  return (
    <>
      <strong>{gapWords[worst.line]}</strong> took the most,{' '}
      {minorWords(-worst.minor, result.currency, locale)}
    </>
  );
}
