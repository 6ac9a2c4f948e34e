'use client';

import Link from 'next/link';
import { Button } from '@/app/_controls/Button';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import { workName } from '@/app/_runBook/workName';
import styles from '@/app/_runs/run/Run.module.css';
import { runTable } from '@/app/_words/making/runs/runTable';
import { withCapital } from '@/app/_words/spelledNumber';
import { workOfJob } from '@/lib/making/list/workOfJob';
import type { RunWork } from '@/shared/schemas/making/run';

/** A run holds no more. */
const MOST = 24;

/** The jobs of a run: whose they are, one more, one less. */
export function WorksFields({ on }: Readonly<{ on: RunOnScreen }>) {
  const { run, facts, workspace, change } = on;
  const { jobs, kinds, stallDays } = workspace;
  const isHere = (jobId: string) => jobs.some(({ id }) => id === jobId);
  const madeFor = ({ orderId, stallDayId }: RunWork) => {
    const order = orderId === null ? undefined : kinds.order.bodies[orderId];
    const day = stallDayId === null ? undefined : stallDays[stallDayId];
    if (order !== undefined) return { name: order.name, href: `/orders/${orderId}` };
    return day === undefined ? undefined : { name: day.name, href: `/stall/${stallDayId}` };
  };
  const taken = new Set(run.works.map(({ jobId }) => jobId));
  const left = jobs.filter(({ id, job }) => !taken.has(id) && job.archivedOn === null);
  const addJob = (jobId: string) => {
    const work = workOfJob(jobId, kinds.order.bodies);
    change('Job of the run', (now) => ({ ...now, works: [...now.works, work] }));
  };
  const takeOut = (at: number) =>
    change('Job of the run', (now) => ({ ...now, works: now.works.filter((_, place) => place !== at) }));
  return (
    <div className={styles.stack}>
      <ul className={styles.rows}>
        {run.works.map((work, at) => {
          const [name, owner] = [withCapital(workName(jobs, facts, work.jobId)), madeFor(work)];
          return (
            // A job may stand here twice, which is said; then only its place tells them apart.
            // biome-ignore lint/suspicious/noArrayIndexKey: as said
            <li className={styles.row} key={`${work.jobId} ${at}`}>
              <div>
                {isHere(work.jobId) ? (
                  <Link href={`/jobs/${work.jobId}`}>
                    <bdi>{name}</bdi>
                  </Link>
                ) : (
                  <bdi>{name}</bdi>
                )}{' '}
                {owner !== undefined && <Link href={owner.href}>{runTable.forOrder(owner.name)}</Link>}
              </div>
              <Button kind="quiet" spoken={runTable.takeOutOf(name)} onPress={() => takeOut(at)}>
                {runTable.takeOut}
              </Button>
            </li>
          );
        })}
      </ul>
      {run.works.length < MOST && left.length > 0 && (
        <ChoiceField
          label={runTable.addChoice}
          value={null}
          unchosen={runTable.add}
          choices={left.map(({ id, job }) => ({ value: id, label: job.name }))}
          onCommit={addJob}
        />
      )}
    </div>
  );
}
