import type { ReactNode } from 'react';
import sheet from '@/app/_controls/ListSheet.module.css';
import { OpenLine, OpenName } from '@/app/_controls/OpenLine';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { workName } from '@/app/_runBook/workName';
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
  /** What is to be minded of it, last. */
  note?: ReactNode;
}>;

/** One run of the list: its name, what is made, how it stands. */
export function RunLine({ facts, workspace: { jobs }, state, answer, note }: RunLineProps) {
  const { runId, run } = facts;
  const names = run.works.map(({ jobId }) => workName(jobs, facts, jobId));
  const told = listed(names);
  return (
    <OpenLine className={styles.line}>
      <div>
        <OpenName level={3} href={`/making/${runId}`}>
          <bdi>{run.name}</bdi>
        </OpenName>
        <p className={sheet.quiet}>
          {told === '' ? runListTable.empty : told !== run.name && <bdi>{told}</bdi>}
        </p>
      </div>
      {state !== undefined && <div className={sheet.state}>{state}</div>}
      {answer !== undefined && <p className={styles.answer}>{answer}</p>}
      {note !== undefined && <div className={styles.answer}>{note}</div>}
    </OpenLine>
  );
}
