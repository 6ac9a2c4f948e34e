import type { ReactNode } from 'react';
import { OpenLine, OpenName } from '@/app/_controls/OpenLine';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { listed } from '@/app/_words/listed';
import { runListTable } from '@/app/_words/making/runs/runListTable';
import type { RunFacts } from '@/lib/making/runFacts';
import styles from './Runs.module.css';

type RunLineProps = Readonly<{
  facts: RunFacts;
  workspace: Pick<ReadyWorkspace, 'jobs'>;
  /** How it stands, opposite its name. */
  state?: ReactNode;
  /** What it comes to, beneath. */
  answer?: ReactNode;
}>;

/** One run of the list: its name, what is made, how it stands. */
export function RunLine({ facts: { runId, run }, workspace: { jobs }, state, answer }: RunLineProps) {
  const names = run.works.flatMap(({ jobId }) => jobs.find(({ id }) => id === jobId)?.job.name ?? []);
  const told = listed(names);
  return (
    <OpenLine className={styles.line}>
      <div>
        <OpenName level={3} href={`/making/${runId}`}>
          <bdi>{run.name}</bdi>
        </OpenName>
        <p className={styles.quiet}>
          {told === '' ? runListTable.empty : told !== run.name && <bdi>{told}</bdi>}
        </p>
      </div>
      {state !== undefined && <div className={styles.state}>{state}</div>}
      {answer !== undefined && <p className={styles.answer}>{answer}</p>}
    </OpenLine>
  );
}
