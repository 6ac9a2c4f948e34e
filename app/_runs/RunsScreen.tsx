'use client';

import { useRouter } from 'next/navigation';
import { useMemo, useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import { Disclosure } from '@/app/_controls/Disclosure';
import sheet from '@/app/_controls/ListSheet.module.css';
import { PageHead } from '@/app/_controls/PageHead';
import { useHash } from '@/app/_controls/useHash';
import type { JobRecord } from '@/app/_documents/documentsByKind';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { MakingLinks } from '@/app/_makingFrame/MakingLinks';
import { LaterPart } from '@/app/_network/LaterPart';
import { useOrderBook } from '@/app/_orderBook/useOrderBook';
import { addRun, nameOfRun } from '@/app/_runBook/runEdits';
import { runKinds } from '@/app/_runBook/runKinds';
import { useRunBook } from '@/app/_runBook/useRunBook';
import { formatterFor } from '@/app/_words/formatter';
import { runListTable } from '@/app/_words/making/runs/runListTable';
import { runShelves } from '@/lib/making/list/runShelves';
import { type ToMake, toMake } from '@/lib/making/list/toMake';
import { wantedDayOf } from '@/lib/making/list/wantedDayOf';
import { workOfJob } from '@/lib/making/list/workOfJob';
import type { RunFacts } from '@/lib/making/runFacts';
import { closeInForce } from '@/lib/stall/closeInForce';
import { stallCalendar } from '@/lib/stall/days/stallCalendar';
import type { RunWork } from '@/shared/schemas/making/run';
import type { Order } from '@/shared/schemas/order';
import { laterParts } from './laterParts';
import { NextRun } from './NextRun';
import { RunLine } from './RunLine';
import { RunNote } from './RunNote';
import { RunState } from './RunState';
import styles from './Runs.module.css';
import { WaitingList } from './WaitingList';

/** Every run: what waits to be made, what is to be made next, what is under way, what is done. */
export function RunsScreen() {
  return <WithWorkspace>{(workspace) => <Runs workspace={workspace} />}</WithWorkspace>;
}

// Helpers

/** An address that ends so asks for a run of that job, order or stall day. */
const ASKED = /^(job|order|day)-(.+)$/;

function Runs({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  const router = useRouter();
  const { workshop } = workspace;
  const hash = useHash();
  const asked = ASKED.exec(hash)?.[2] ?? null;
  const [isNew, setNew] = useState(false);
  const { runs, waiting, wantedOn, dayOf } = useRunsList(workspace);
  const askedOrder = asked === null ? undefined : workspace.kinds.order.bodies[asked];
  // One that nobody has accepted yet can be made all the same, if its maker says so.
  const offered =
    asked === null || askedOrder === undefined || waiting.some(({ id }) => id === asked)
      ? waiting
      : [...waiting, toMakeOf(asked, askedOrder)];
  const { underWay, open, done, putAway } = runShelves(runs, wantedOn);
  const formatter = formatterFor(workshop);
  const begin = (name: string, works: readonly RunWork[]) => {
    const id = addRun(workspace, name, works);
    if (id !== null) router.push(`/making/${id}`);
  };
  const leave = () => {
    setNew(false);
    if (asked !== null) router.push('/making');
  };
  const [next, ...later] = open;
  const list = (some: readonly RunFacts[]) => (
    <ul className={sheet.list}>
      {some.map((facts, at) => (
        <RunLine
          key={facts.runId}
          {...{ facts, workspace }}
          state={<RunState {...{ facts, workspace }} day={wantedOn(facts)} />}
          note={<RunNote {...{ facts, workspace, at }} />}
        />
      ))}
    </ul>
  );
  return (
    <>
      <MakingLinks here="/making" />
      <PageHead
        title={runListTable.title}
        line={runListTable.line}
        aside={
          <Button
            kind={waiting.length === 0 ? 'strong' : 'plain'}
            expanded={isNew}
            onPress={() => setNew(!isNew)}
          >
            {runListTable.new}
          </Button>
        }
      />
      {(isNew || asked !== null) && (
        <LaterPart
          part={laterParts.newRun}
          what="The form of a new run"
          props={{
            ...{ workspace, onAdd: begin, onLeave: leave },
            waiting: offered,
            first: asked === null ? [] : [asked],
          }}
        />
      )}
      <UnreadableRecords workspace={workspace} level={2} of={runKinds} />
      <div className={sheet.card}>
        {waiting.length > 0 && (
          <WaitingList
            {...{ waiting, workspace }}
            onMake={({ name, works }) => begin(nameOfRun([name]), works)}
          />
        )}
        {underWay.length > 0 && (
          <Part id="runs-under-way" heading={runListTable.underWay} body={list(underWay)} />
        )}
        <Part
          id="runs-open"
          heading={runListTable.open}
          body={
            next === undefined ? (
              <NoneOpen
                first={runs.length === 0 ? firstToPlan(workspace.jobs, waiting) : undefined}
                isNone={runs.length === 0}
                onPlan={({ id, job }) =>
                  begin(nameOfRun([job.name]), [workOfJob(id, workspace.kinds.order.bodies)])
                }
              />
            ) : (
              <ul className={sheet.list}>
                <NextRun
                  key={next.runId}
                  facts={next}
                  dayOf={dayOf}
                  state={<RunState facts={next} day={wantedOn(next)} {...{ workspace }} />}
                  {...{ workspace }}
                />
                {later.map((facts) => (
                  <RunLine
                    key={facts.runId}
                    {...{ facts, workspace }}
                    state={<RunState {...{ facts, workspace }} day={wantedOn(facts)} />}
                  />
                ))}
              </ul>
            )
          }
        />
        {done.length > 0 && <Part id="runs-done" heading={runListTable.done} body={list(done)} />}
        {putAway.length > 0 && (
          <div className={sheet.fold}>
            <Disclosure
              id="runs-put-away"
              level={2}
              heading={runListTable.putAway(formatter.count(putAway.length, 'run'))}
            >
              {list(putAway)}
            </Disclosure>
          </div>
        )}
      </div>
    </>
  );
}

type NoneOpenProps = Readonly<{
  isNone: boolean;
  first: JobRecord | undefined;
  onPlan: (job: JobRecord) => void;
}>;

/** Before the first run a job is planned with one press: that shows what a run is. */
const NoneOpen = ({ isNone, first, onPlan }: NoneOpenProps) => (
  <div className={classes(sheet.none, styles.none)}>
    <p>{isNone ? runListTable.none : runListTable.noneOpen}</p>
    {first !== undefined && (
      <Button onPress={() => onPlan(first)}>{runListTable.planOf(first.job.name)}</Button>
    )}
  </div>
);

/** The job changed last of those that stand under no button already. */
function firstToPlan(jobs: readonly JobRecord[], waiting: readonly ToMake[]): JobRecord | undefined {
  const offered = new Set(waiting.flatMap(({ works }) => works.map(({ jobId }) => jobId)));
  return jobs.find(({ id }) => !offered.has(id));
}
const toMakeOf = (id: string, order: Order): ToMake => ({
  ...{ kind: 'order', id, name: order.name, wantedOn: order.wantedOn },
  works: order.jobIds.map((jobId) => ({ jobId, orderId: id, stallDayId: null })),
});

type PartProps = Readonly<{ id: string; heading: string; body: React.ReactNode }>;

const Part = ({ id, heading, body }: PartProps) => (
  <section className={styles.part} aria-labelledby={id}>
    <h2 className={sheet.heading} id={id}>
      {heading}
    </h2>
    {body}
  </section>
);

interface RunsList {
  readonly runs: readonly RunFacts[];
  readonly waiting: readonly ToMake[];
  readonly wantedOn: (facts: RunFacts) => string | null;
  readonly dayOf: (work: RunWork) => string | null;
}

function useRunsList(workspace: ReadyWorkspace): RunsList {
  const { runs } = useRunBook(workspace);
  const { board, jobOf, of } = useOrderBook(workspace);
  const { stallDays, papers } = workspace;
  const today = useToday();
  const waiting = useMemo(() => {
    const isClosed = (id: string) => closeInForce(papers.dayClose, id) !== null;
    const { coming } = stallCalendar(stallDays, today, isClosed);
    const here = runs.flatMap(({ run }) => (run.archivedOn === null ? [run] : []));
    return toMake(board, coming, here, (jobId) => jobOf(jobId) !== null);
  }, [board, jobOf, stallDays, papers.dayClose, runs, today]);
  const dayOf = (work: RunWork) =>
    wantedDayOf(work, { orderOf: of, stallDays, jobOf: (jobId) => jobOf(jobId)?.job });
  const wantedOn = ({ run }: RunFacts): string | null =>
    run.works.flatMap((work) => dayOf(work) ?? []).toSorted()[0] ?? null;
  return { runs, waiting, wantedOn, dayOf };
}
