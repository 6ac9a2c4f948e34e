'use client';

import Link from 'next/link';
import { useRouter } from 'next/navigation';
import { startTransition, useDeferredValue, useMemo, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { PageHead } from '@/app/_controls/PageHead';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import { CarryTold } from '@/app/_copies/CarryTold';
import { DropToBringIn } from '@/app/_copies/DropToBringIn';
import { useCarrying } from '@/app/_copies/useCarrying';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import { lazyFindingWords } from '@/app/_words/findings/lazyFindingWords';
import { formatterFor } from '@/app/_words/formatter';
import { usableLocale } from '@/app/_words/usableLocale';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { exampleJobIds } from '@/lib/examples/exampleJobIds';
import { isExampleWorkshop } from '@/lib/examples/isExampleWorkshop';
import { JobFinder, stateFilterId } from './JobFinder';
import styles from './JobList.module.css';
import { JobsAnswer } from './JobsAnswer';
import { JobTable } from './JobTable';
import { findJobs, type JobSort, type JobsWanted, jobEntries, sortJobs } from './jobEntries';
import { useJobActions } from './useJobActions';
import { useJobFigures } from './useJobFigures';

/** As many rows come at once, the next when they are asked for: hundreds would hold the page up. */
const ROWS = 40;

/** All jobs with what they earn: searched, sorted, copied, put away and removed. */
export function JobList({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  const router = useRouter();
  const { jobs, blanks, artworks, workshop, undoLabel, undo } = workspace;
  const [wanted, setWanted] = useState<JobsWanted>({ search: '', state: null, away: false });
  const [sort, setSort] = useState<JobSort>({ by: 'changed', down: false });
  const [rows, setRows] = useState(ROWS);
  const carried = useCarrying(workspace);
  const { actions, gone, begin } = useJobActions(
    workspace,
    (id) => router.push(`/jobs/${id}`),
    carried.carry,
    (state) => {
      // The row goes out of the list, with the field that has the focus.
      if (wanted.state !== null && wanted.state !== state) focusById(stateFilterId(wanted.state));
    },
  );
  // The letters typed come first, the rows after them.
  const looked = useDeferredValue(wanted);
  const entries = useMemo(
    () => jobEntries({ jobs, blanks, artworks, workshop }),
    [jobs, blanks, artworks, workshop],
  );
  const found = useMemo(() => findJobs(entries, looked), [entries, looked]);
  const inTurn = useMemo(() => {
    // By figures that are still being made the order would change under the questions.
    const known =
      sort.by === 'margin' || sort.by === 'pay'
        ? found.found
        : sortJobs(found.found, sort, () => null, workshop.locale);
    const others = entries.filter((entry) => entry.kept.job.archivedOn === null && !known.includes(entry));
    return [...known, ...others].map(({ kept }) => kept);
  }, [entries, found, sort, workshop.locale]);
  const { figuresOf, failure } = useJobFigures(workspace, inTurn);
  const stopWords = useLazy(lazyFindingWords);
  const sorted = useMemo(
    () => sortJobs(found.found, sort, ({ kept }) => figuresOf(kept), usableLocale(workshop.locale)),
    [found, sort, figuresOf, workshop.locale],
  );
  const shown = sorted.slice(0, rows);
  const more = sorted.length - shown.length;
  // What was asked to be shown stands at another place in another order.
  const turn = (to: JobSort) =>
    startTransition(() => {
      setSort(to);
      setRows(ROWS);
    });
  const formatter = formatterFor(workshop);
  // Where those put away are listed too, the job is still in its row.
  const isGone = gone !== null && undoLabel === gone.label && (gone.how === 'removed' || !wanted.away);
  const current = entries.filter(({ kept }) => kept.job.archivedOn === null);
  return (
    <>
      <PageHead
        title="Jobs"
        line={
          entries.length === 0
            ? 'None yet.'
            : `${formatter.count(current.length, 'job')}${entries.length > current.length ? `, ${formatter.number(entries.length - current.length)} put away` : ''}`
        }
        aside={
          <Button kind="strong" onPress={begin}>
            New job
          </Button>
        }
      />
      <RemovedNote what={isGone ? gone.name : null} how={gone?.how} onUndo={() => void undo()} />
      <CarryTold from={carried} />
      <UnreadableRecords workspace={workspace} level={2} />
      <DropToBringIn workspace={workspace}>
        {entries.length > 0 && (
          <section className={styles.card} aria-label="All jobs">
            <JobsAnswer kept={current.map(({ kept }) => kept)} figuresOf={figuresOf} workshop={workshop} />
            <JobFinder
              {...{ wanted, found, sort }}
              awayCount={entries.length - current.length}
              onWanted={(to) => {
                setWanted(to);
                setRows(ROWS);
              }}
              onSort={turn}
              formatter={formatter}
            />
            <AnswerMissing what="Margins and pay could not be worked out" failure={failure} />
            {stopWords.kind === 'missing' &&
              shown.some(({ kept }) => figuresOf(kept)?.kind === 'stopped') && (
                <PartMissing what="Why jobs have no price" missing={stopWords} />
              )}
            {shown.length > 0 && (
              <JobTable
                {...{ sort, actions, workshop, figuresOf }}
                entries={shown}
                sayStop={stopWords.kind === 'here' ? stopWords.value : null}
                onSort={turn}
              />
            )}
            {more > 0 && (
              <div className={styles.more}>
                <Button onPress={() => startTransition(() => setRows(rows + ROWS))}>
                  Show {formatter.count(Math.min(more, ROWS), 'more job')}
                </Button>
              </div>
            )}
          </section>
        )}
      </DropToBringIn>
      <p className={styles.foot}>
        {jobs.some(({ id }) => exampleJobIds.includes(id)) ? (
          isExampleWorkshop(workshop) ? (
            <>
              The jobs of the example are invented. <Link href="/start">Start your own workshop</Link> when
              you are ready.
            </>
          ) : (
            'The jobs of the example are invented. Remove them once you need them no more.'
          )
        ) : (
          jobs.length === 0 &&
          'A new job begins with the first blank and the first machines of your workshop.'
        )}
      </p>
    </>
  );
}
