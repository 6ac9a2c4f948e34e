'use client';

import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { AddOwnRow } from '@/app/_ownRows/AddOwnRow';
import { OwnRowList } from '@/app/_ownRows/OwnRowList';
import styles from './WorkshopParts.module.css';
import type { WorkshopFields } from './workshopFields';

/** The maker's own cost rows that count in every job. What each adds is read on the cost sheet of a job. */
export function OwnRowsSection({ fields: { workshop, set } }: Readonly<{ fields: WorkshopFields }>) {
  const { ownRows } = workshop;
  return (
    <div id={workshopFieldId(['ownRows'])}>
      <p className={styles.words}>
        A licence, pins, a share of a stand: a cost the other lines leave out, in every job from now on.
      </p>
      <OwnRowList
        of="workshop"
        rows={ownRows}
        everyRow={ownRows}
        placements={1}
        findings={[]}
        sheet={null}
        onSet={set}
        onRemove={(row) =>
          set(
            `Remove ${row.label}`,
            ['ownRows'],
            ownRows.filter(({ id }) => id !== row.id),
          )
        }
      />
      <AddOwnRow
        taken={ownRows.map(({ id }) => id)}
        everyRow={ownRows}
        placements={1}
        only="workshop"
        onAdd={(row) => set(row.label, ['ownRows', ownRows.length], row)}
      />
    </div>
  );
}
