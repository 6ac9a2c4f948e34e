'use client';

import Link from 'next/link';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { PageHead } from '@/app/_controls/PageHead';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import type { JobRecord } from '@/app/_documents/documentsByKind';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { exampleJobIds } from '@/lib/examples/exampleJobIds';
import { JobLine } from './JobLine';
import styles from './JobList.module.css';
import { jobMaking } from './jobMaking';

/** All jobs, last changed first, each with what a maker looks for in a list. */
export function JobList({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  const router = useRouter();
  const [removed, setRemoved] = useState<string | null>(null);
  const { jobs, undoLabel, undo } = workspace;
  const making = jobMaking(workspace);
  const open = (id: string | null) => {
    if (id !== null) router.push(`/jobs/${id}`);
  };
  const remove = ({ id, job }: JobRecord) => {
    const label = `Remove ${job.name}`;
    workspace.remove({ kind: 'job', id }, label);
    setRemoved(job.name);
  };
  const hasExample = jobs.some(({ id }) => exampleJobIds.includes(id));
  return (
    <>
      <PageHead
        title="Jobs"
        line={jobs.length === 0 ? 'None yet.' : 'Last changed first.'}
        aside={
          <Button kind="strong" onPress={() => open(making.begin())}>
            New job
          </Button>
        }
      />
      <RemovedNote what={undoLabel === `Remove ${removed}` ? removed : null} onUndo={() => void undo()} />
      <UnreadableRecords workspace={workspace} level={2} />
      {jobs.length > 0 && (
        <ul className={styles.list}>
          {jobs.map((kept) => (
            <JobLine
              key={kept.id}
              kept={kept}
              workshop={workspace.workshop}
              onCopy={() => open(making.copy(kept.job))}
              onRemove={() => remove(kept)}
            />
          ))}
        </ul>
      )}
      <p className={styles.foot}>
        {hasExample ? (
          <>
            The jobs of the example are invented. <Link href="/start">Start your own workshop</Link> when you
            are ready.
          </>
        ) : (
          jobs.length === 0 &&
          'A new job begins with the first blank and the first machines of your workshop.'
        )}
      </p>
    </>
  );
}
