'use client';

import { useJob } from '@/app/_docket/common/useJob';
import { AddOwnRow } from '@/app/_ownRows/AddOwnRow';
import { OwnRowList } from '@/app/_ownRows/OwnRowList';
import styles from './OwnRows.module.css';

/** The maker's own cost rows: those of this job, and those of the workshop that count in every job. */
export function OwnRows() {
  const { jobId, input, workspace, findings, figures } = useJob();
  const { setField, changeJob, changeWorkshop } = workspace;
  const { job, workshop } = input;
  const placements = Math.max(...job.lines.map((line) => line.placements.length));
  const shared = { findings, sheet: figures?.sheet ?? null, placements };
  const everyRow = [...workshop.ownRows, ...job.ownRows];
  const taken = everyRow.map(({ id }) => id);
  return (
    <section className={styles.part} id="own-rows" aria-labelledby="own-rows-heading">
      <h3 className="visuallyHidden" id="own-rows-heading">
        Your own rows
      </h3>
      <p className={styles.line}>A pattern fee, a licence, pins: whatever the lines above leave out.</p>
      <OwnRowList
        {...shared}
        of="job"
        rows={job.ownRows}
        everyRow={everyRow}
        onSet={(label, path, value) => setField({ kind: 'job', id: jobId }, label, path, value)}
        onRemove={(row) =>
          changeJob(jobId, `${row.label}, removed`, (now) => ({
            ...now,
            ownRows: now.ownRows.filter(({ id }) => id !== row.id),
          }))
        }
      />
      <OwnRowList
        {...shared}
        of="workshop"
        rows={workshop.ownRows}
        everyRow={everyRow}
        onSet={(label, path, value) => setField({ kind: 'workshop' }, label, path, value)}
        onRemove={(row) =>
          changeWorkshop(`${row.label}, removed`, (now) => ({
            ...now,
            ownRows: now.ownRows.filter(({ id }) => id !== row.id),
          }))
        }
      />
      <AddOwnRow
        taken={taken}
        everyRow={everyRow}
        placements={placements}
        onAdd={(row, of) =>
          of === 'job'
            ? changeJob(jobId, row.label, (now) => ({ ...now, ownRows: [...now.ownRows, row] }))
            : changeWorkshop(row.label, (now) => ({ ...now, ownRows: [...now.ownRows, row] }))
        }
      />
    </section>
  );
}
