import { Button } from '@/app/_controls/Button';
import { Carry } from '@/app/_copies/Carry';
import { TextField } from '@/app/_fields/TextField';
import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import { runTable } from '@/app/_words/making/runs/runTable';
import { textLimits } from '@/shared/limits';
import { runSchema } from '@/shared/schemas/making/run';
import styles from './Run.module.css';

type PutAwayProps = Readonly<{
  on: RunOnScreen;
  /** Told what undo calls it. */
  onRemoved: (label: string) => void;
}>;

/** A note, the way to the phone at the press and back, and how a run leaves the list: one that was begun is put away, for its notes stay. */
export function PutAway({ on, onRemoved }: PutAwayProps) {
  const { run, facts, today, workspace, id } = on;
  const remove = () => {
    const label = `Remove ${run.name}`;
    onRemoved(label);
    workspace.remove({ kind: 'run', id }, label);
  };
  return (
    <div className={styles.below}>
      <div className={styles.stack}>
        <TextField
          label="Note, only for you"
          width="full"
          rows={3}
          value={run.note}
          {...textLimits(runSchema, ['note'])}
          onCommit={(note) => on.set('Note of the run', ['note'], note)}
        />
        <Carry store={workspace} what={{ kind: 'run', id, name: run.name }} words={runTable.carry} />
        <div className={styles.ends}>
          <Button
            onPress={() =>
              on.set(
                run.archivedOn === null ? `Put ${run.name} away` : `Bring ${run.name} back`,
                ['archivedOn'],
                run.archivedOn === null ? today : null,
              )
            }
          >
            {run.archivedOn === null ? runTable.putAway : runTable.bringBack}
          </Button>
          {!facts.isBegun && (
            <Button kind="quiet" onPress={remove}>
              {runTable.remove}
            </Button>
          )}
        </div>
      </div>
    </div>
  );
}
