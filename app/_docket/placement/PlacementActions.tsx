'use client';

import { Button } from '@/app/_controls/Button';
import { useJob } from '@/app/_docket/common/useJob';
import type { Line } from '@/shared/schemas/job';
import styles from './PlacementBody.module.css';

type PlacementActionsProps = Readonly<{ line: Line; index: number }>;

/** Moves a placement in the press order, or takes it out. */
export function PlacementActions({ line, index }: PlacementActionsProps) {
  const { jobId, workspace } = useJob();
  const placement = line.placements[index];
  if (placement === undefined || line.placements.length < 2) return null;
  const { name } = placement;
  const setPlacements = (label: string, placements: Line['placements']) =>
    workspace.changeJob(jobId, label, (job) => ({
      ...job,
      lines: job.lines.map((other) => (other.id === line.id ? { ...other, placements } : other)),
    }));
  const moveTo = (place: number, label: string) =>
    setPlacements(label, line.placements.toSpliced(index, 1).toSpliced(place, 0, placement));
  return (
    <div className={styles.actions}>
      {index > 0 && (
        <Button kind="quiet" onPress={() => moveTo(index - 1, `${name} pressed earlier`)}>
          Press it earlier
        </Button>
      )}
      {index < line.placements.length - 1 && (
        <Button kind="quiet" onPress={() => moveTo(index + 1, `${name} pressed later`)}>
          Press it later
        </Button>
      )}
      <Button
        kind="quiet"
        onPress={() => setPlacements(`Took out ${name}`, line.placements.toSpliced(index, 1))}
      >
        Take {name} out
      </Button>
    </div>
  );
}
