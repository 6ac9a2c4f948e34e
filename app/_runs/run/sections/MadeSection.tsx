import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { PickRow } from '@/app/_fields/PickRow';
import { LaterPart } from '@/app/_network/LaterPart';
import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import { laterParts } from '@/app/_runs/run/laterParts';
import styles from '@/app/_runs/run/Run.module.css';
import { coverNames } from '@/app/_words/making/coverNames';
import { runTable } from '@/app/_words/making/runs/runTable';
import { takenWords } from '@/app/_words/making/runs/takenWords';
import { blanksOfRun } from '@/lib/making/standard/blanksOfRun';
import { covers } from '@/shared/schemas/making/supply';

/** What is made: jobs, how sure every size is to come out whole, and in which order sizes are pressed. */
export function MadeSection({ on, numeral }: Readonly<{ on: RunOnScreen; numeral: number }>) {
  const { run, jobs, formatter, id, pieces, answer } = on;
  const taken = takenWords(blanksOfRun(jobs, run.cover), formatter);
  const count = run.works.length;
  return (
    <CardSection
      {...{ numeral }}
      id="made"
      heading={on.facts.standard === null ? runTable.made : runTable.madeNow}
      answer={
        count === 0 ? (
          'Nothing yet'
        ) : answer === null ? (
          runTable.waits
        ) : jobs.length === 0 ? (
          runTable.noSums
        ) : (
          <>
            <strong>{formatter.count(pieces, 'piece')}</strong> of{' '}
            {jobs.length < count
              ? runTable.someOf(formatter.number(jobs.length), count)
              : formatter.count(count, 'job')}
            {taken === null ? '' : `; ${taken}`}
          </>
        )
      }
    >
      <div>
        <div className={styles.stack}>
          <p>{runTable.cover}</p>
          <PickRow
            label={runTable.cover}
            value={run.cover}
            choices={covers.map((value) => ({ value, label: coverNames[value] }))}
            onPick={(cover) => on.set('Spares of the run', ['cover'], cover)}
          />
          <p className={styles.quiet}>{runTable.coverTold}</p>
        </div>
      </div>
      <FoldRow
        place={`${id} made`}
        folds={[
          {
            id: 'run-works',
            name: runTable.worksFold,
            body: () => <LaterPart part={laterParts.works} what="The jobs" props={{ on }} />,
          },
          {
            id: 'run-sizes',
            name: runTable.sizesFold,
            body: () => <LaterPart part={laterParts.sizes} what="The order of sizes" props={{ on }} />,
          },
        ]}
      />
    </CardSection>
  );
}
