'use client';

import Link from 'next/link';
import type { ReactNode } from 'react';
import { Button } from '@/app/_controls/Button';
import { useJob } from '@/app/_docket/common/useJob';
import { newPlacement } from '@/app/_docket/placement/newPlacement';
import { PlacementFold } from '@/app/_docket/placement/PlacementFold';
import { newId } from '@/app/_documents/newId';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { jobWithBlank } from '@/lib/drafts/jobWithBlank';
import { type Line, MOST_PLACEMENTS } from '@/shared/schemas/job';
import styles from './LineEditor.module.css';
import { LineMore } from './LineMore';
import { LinePrice } from './LinePrice';
import { LineSizes } from './LineSizes';

type LineEditorProps = Readonly<{
  line: Line;
  index: number;
  /** What may be added after this line, beside what may be added to it. */
  after?: ReactNode;
}>;

/** One product of the job: its blank, sizes and price open, all else folded away under one line each. */
export function LineEditor({ line, index, after }: LineEditorProps) {
  const { jobId, input, workspace, field } = useJob();
  const { blanks } = input;
  const several = input.job.lines.length > 1;
  const path = ['lines', index] as const;
  const choices = Object.entries(blanks)
    .map(([value, { name }]) => ({ value, label: name }))
    .toSorted((one, other) => one.label.localeCompare(other.label));
  const addPlacement = () =>
    workspace.changeJob(jobId, `Added placement on ${line.name}`, (job) => ({
      ...job,
      lines: job.lines.map((other) =>
        other.id === line.id
          ? { ...other, placements: [...other.placements, newPlacement(other.placements, newId)] }
          : other,
      ),
    }));
  const takeBlank = (id: string) => {
    const body = blanks[id];
    if (body === undefined) return;
    const change = { lineId: line.id, from: blanks[line.blankId], to: { id, body }, day: input.asOf };
    workspace.changeJob(jobId, `Blank of ${line.name}`, (job) =>
      jobWithBlank(job, { ...change, workshop: input.workshop }),
    );
  };
  return (
    <div>
      {several && <h3 className={styles.name}>{line.name}</h3>}
      <FieldGroup>
        <div className={styles.blank}>
          <ChoiceField
            {...field('Blank', [...path, 'blankId'], `Blank of ${line.name}`)}
            value={blanks[line.blankId] === undefined ? null : line.blankId}
            choices={choices}
            onCommit={takeBlank}
          />
          {blanks[line.blankId] !== undefined && (
            <Link className={styles.link} href={`/blanks?id=${line.blankId}`}>
              Prices and sizes of this blank
            </Link>
          )}
        </div>
        <LineSizes line={line} index={index} />
      </FieldGroup>
      <div className={styles.price}>
        <LinePrice line={line} index={index} />
      </div>
      <div className={styles.folds}>
        {line.placements.map((placement, at) => (
          <PlacementFold key={placement.id} line={line} lineIndex={index} index={at} />
        ))}
        <LineMore line={line} index={index} />
      </div>
      <div className={styles.add}>
        <Button
          kind="quiet"
          onPress={addPlacement}
          blockedBy={
            line.placements.length < MOST_PLACEMENTS
              ? undefined
              : `A piece is pressed ${MOST_PLACEMENTS} times at most.`
          }
        >
          Add a placement{several ? ` on ${line.name}` : ''}
        </Button>
        {after}
      </div>
    </div>
  );
}
