import { Button } from '@/app/_controls/Button';
import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { DateField } from '@/app/_fields/DateField';
import { LaterPart } from '@/app/_network/LaterPart';
import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import { laterParts } from '@/app/_runs/run/laterParts';
import styles from '@/app/_runs/run/Run.module.css';
import type { ClockDesign } from '@/app/_words/making/runs/clockPartWords';
import { weekdayWords } from '@/app/_words/making/runs/runAnswerWords';
import { runTable } from '@/app/_words/making/runs/runTable';
import { heatingsWords, moreWords, runNoteWords } from '@/app/_words/making/runs/runTroubleWords';
import type { RunJob } from '@/lib/making/runPlan';
import { ClockTable } from './ClockTable';

/** When it is made: the clock day by day, and what decides it. */
export function WhenSection({ on, numeral }: Readonly<{ on: RunOnScreen; numeral: number }>) {
  const { run, planned, jobs, locale, formatter, id, set } = on;
  const plan = planned?.plan ?? null;
  return (
    <CardSection
      {...{ numeral }}
      id="when"
      heading={on.facts.standard === null ? runTable.when : runTable.whenNow}
      answer={
        plan === null ? (
          runTable.noClock
        ) : (
          <>
            <strong>Done on {weekdayWords(plan.lastDay, locale)}</strong>, {heatingsWords(plan.heatings)}
          </>
        )
      }
    >
      {plan !== null && (
        <>
          {[
            ...plan.notes.map((note) => runNoteWords(note, locale)),
            ...(plan.more === null ? [] : [moreWords(plan.more, formatter, locale)]),
          ].map((words) => (
            <p key={words} className={styles.quiet}>
              {words}
            </p>
          ))}
          <ClockTable clock={plan.clock} designs={jobs.map(designOf)} locale={locale} />
        </>
      )}
      <div className={styles.block}>
        <DateField
          label={runTable.startsOn}
          id="run-starts-on"
          width="narrow"
          hint={runTable.startsHint}
          value={run.startsOn}
          onCommit={(day) => set(runTable.startsOn, ['startsOn'], day)}
        />
        {run.heatings !== null && (
          <Button onPress={() => set('Heatings-up of the run', ['heatings'], null)}>
            {runTable.asPriced}
          </Button>
        )}
      </div>
      <FoldRow
        place={`${id} when`}
        folds={[
          {
            id: 'run-blocks',
            name: runTable.blocksFold,
            body: () => <LaterPart part={laterParts.blocks} what="The blocks" props={{ on }} />,
          },
          {
            id: 'run-waits',
            name: runTable.waitsFold,
            holds: ['run-dry', 'run-cool', 'run-sealed'],
            body: () => <LaterPart part={laterParts.waits} what="Drying and cooling" props={{ on }} />,
          },
        ]}
      />
    </CardSection>
  );
}

// Helpers

const designOf = ({ work, input: { job } }: RunJob): ClockDesign => ({
  ...{ jobId: work.jobId, name: job.name },
  lines: job.lines.map(({ id, name }) => ({ lineId: id, name })),
});
