import { Button } from '@/app/_controls/Button';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { mirrorTable, mirrorWords } from '@/app/_words/making/runs/mirrorWords';
import { withCapital } from '@/app/_words/spelledNumber';
import type { RunFacts } from '@/lib/making/runFacts';
import type { MirrorDoubt } from '@/lib/pressing/mirrorDoubts';
import styles from './MirrorNote.module.css';
import { workName } from './workName';

type MirrorNoteProps = Readonly<{
  workspace: Pick<ReadyWorkspace, 'note' | 'jobs'>;
  facts: Pick<RunFacts, 'runId' | 'run' | 'standard'>;
  today: string;
  /** Of all runs; those of this one's jobs are told. */
  doubts: readonly MirrorDoubt[];
}>;

/** Prints of these jobs came out reversed: the mirror is to be looked at before the next one, until the maker says it was. */
export function MirrorNote({ workspace, facts, today, doubts }: MirrorNoteProps) {
  const { runId, run, standard } = facts;
  const own = doubts.filter(({ jobId }) => run.works.some((work) => work.jobId === jobId));
  return own.map(({ jobId, pressingIds }) => {
    const name = withCapital(workName(workspace.jobs, facts, jobId));
    return (
      <div key={jobId} className={styles.note}>
        <p>{mirrorWords(name, pressingIds.length)}</p>
        <Button
          spoken={`${mirrorTable.checked}: ${name}`}
          onPress={() =>
            void workspace.note(mirrorTable.checked, [
              {
                kind: 'runStep',
                body: {
                  ...{ runId, standardId: standard?.id ?? null, day: today },
                  step: { what: 'mirrorChecked', jobId, pressingIds: [...pressingIds] },
                },
              },
            ])
          }
        >
          {mirrorTable.checked}
        </Button>
      </div>
    );
  });
}
