import { Button } from '@/app/_controls/Button';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Formatter } from '@/app/_words/formatter';
import { pressedWords } from '@/app/_words/stall/makingWords';
import { pressedMoves } from '@/lib/stall/making/pressedMoves';
import styles from './Making.module.css';
import type { Making } from './useMaking';

type PressedActsProps = Readonly<{
  workspace: Pick<ReadyWorkspace, 'note'>;
  making: Making;
  formatter: Formatter;
}>;

/** Of each job that has its numbers: that it was pressed, which brings its pieces home. */
export function PressedActs({ workspace, making: { jobs, press }, formatter }: PressedActsProps) {
  const ready = jobs.flatMap(({ jobId, isSet, designId, job }) => {
    if (jobId === null || !isSet) return [];
    const moves = pressedMoves(
      jobId,
      press.filter((one) => one.jobId === designId),
    );
    const pieces = moves.reduce((sum, { quantity }) => sum + quantity, 0);
    return pieces === 0 ? [] : [{ jobId, name: job.name, moves, pieces }];
  });
  if (ready.length === 0) return null;
  return (
    <div className={styles.acts}>
      {ready.map(({ jobId, name, moves, pieces }) => (
        <Button
          key={jobId}
          onPress={() =>
            workspace.note(
              `${name} pressed`,
              moves.map((body) => ({ kind: 'stockMove', body })),
            )
          }
        >
          {pressedWords(name, pieces, formatter)}
        </Button>
      ))}
    </div>
  );
}
