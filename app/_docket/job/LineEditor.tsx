'use client';

import type { ReactNode } from 'react';
import { Button } from '@/app/_controls/Button';
import { type FoldOfRow, FoldRow } from '@/app/_controls/FoldRow';
import { exampleGroup } from '@/app/_docket/common/exampleGroup';
import { fieldId } from '@/app/_docket/common/fieldId';
import { useJob } from '@/app/_docket/common/useJob';
import { newPlacement } from '@/app/_docket/placement/newPlacement';
import { PlacementBody } from '@/app/_docket/placement/PlacementBody';
import { PlacementCard } from '@/app/_docket/placement/PlacementCard';
import { PlacementName } from '@/app/_docket/placement/PlacementName';
import { newId } from '@/app/_documents/newId';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { blankChangeWords } from '@/app/_words/docket/blankChangeWords';
import { formatterFor } from '@/app/_words/formatter';
import { jobWithBlank } from '@/lib/drafts/jobWithBlank';
import { measuredScrap } from '@/lib/learning/measuredScrap';
import { type Job, type Line, MOST_PLACEMENTS } from '@/shared/schemas/job';
import styles from './LineEditor.module.css';
import { LineMore, lineMoreFields } from './LineMore';
import { LinePrice } from './LinePrice';
import { LineSizes } from './LineSizes';

type LineEditorProps = Readonly<{
  line: Line;
  index: number;
  /** Folds of the whole job that stand in the same row. */
  folds: readonly FoldOfRow[];
  /** What may be done with the line, or added after it. */
  after: ReactNode;
}>;

/** One product of the job: its blank, sizes, price and drawn prints open, all else folded away. */
export function LineEditor({ line, index, folds, after }: LineEditorProps) {
  const { jobId, input, workspace, field } = useJob();
  const { blanks } = input;
  const formatter = formatterFor(useTextContext());
  const several = input.job.lines.length > 1;
  const path = ['lines', index] as const;
  const choices = Object.entries(blanks)
    .map(([value, { name }]) => ({ value, label: name, group: exampleGroup(jobId, value) }))
    .toSorted((one, other) => one.label.localeCompare(other.label));
  const setLine = (label: string, to: (line: Line, others: readonly Line[]) => Line) =>
    workspace.changeJob(jobId, label, (job) => {
      const others = job.lines.filter(({ id }) => id !== line.id);
      return { ...job, lines: job.lines.map((one) => (one.id === line.id ? to(one, others) : one)) };
    });
  const takeBlank = (id: string) => {
    const body = blanks[id];
    if (body === undefined) return;
    const change = {
      ...{ lineId: line.id, from: blanks[line.blankId], to: { id, body }, day: input.asOf },
      measuredScrap: measuredScrap(
        workspace.entries.rateTaken.map((entry) => entry.body),
        id,
      ),
    };
    const moved = (job: Job) => jobWithBlank(job, { ...change, workshop: input.workshop });
    const after = moved(input.job).lines.find(({ id: lineId }) => lineId === line.id) ?? line;
    workspace.changeJob(jobId, blankChangeWords(line, after, change.from, formatter), moved);
  };
  const addPlacement = () =>
    setLine(`Added placement on ${line.name}`, (one) => ({
      ...one,
      placements: [...one.placements, newPlacement(one.placements, newId)],
    }));
  const placementFold = ({ id, name }: Line['placements'][number], at: number): FoldOfRow => {
    const place = [...path, 'placements', at];
    return {
      id: `${line.id} ${id}`,
      fieldId: fieldId(place),
      name: <PlacementName name={name} path={place} />,
      holds: [fieldId(place)],
      body: () => <PlacementBody line={line} lineIndex={index} index={at} />,
    };
  };
  return (
    <div>
      {several && <h3 className={styles.name}>{line.name}</h3>}
      <div className={styles.line}>
        <div className={styles.fields}>
          <div className={styles.blank}>
            <ChoiceField
              {...field('Blank', [...path, 'blankId'], `Blank of ${line.name}`)}
              value={blanks[line.blankId] === undefined ? null : line.blankId}
              choices={choices}
              width="full"
              onCommit={takeBlank}
            />
          </div>
          <LineSizes line={line} index={index} />
          <LinePrice line={line} index={index} />
        </div>
        <ul className={styles.drawn}>
          {line.placements.map(({ id }, at) => (
            <PlacementCard key={id} line={line} lineIndex={index} index={at} />
          ))}
        </ul>
      </div>
      <FoldRow
        place={jobId}
        folds={[
          ...line.placements.map(placementFold),
          {
            id: `${line.id} more`,
            fieldId: fieldId([...path, 'more']),
            name: 'Packaging, up-charges, names',
            holds: lineMoreFields.map((key) => fieldId([...path, key])),
            body: () => <LineMore line={line} index={index} />,
          },
          ...folds,
        ]}
        after={
          <>
            <Button
              kind="quiet"
              spoken={`Add a print on ${line.name}`}
              onPress={addPlacement}
              blockedBy={
                line.placements.length < MOST_PLACEMENTS
                  ? undefined
                  : `A piece is pressed ${MOST_PLACEMENTS} times at most.`
              }
            >
              Add a print
            </Button>
            {after}
          </>
        }
      />
    </div>
  );
}
