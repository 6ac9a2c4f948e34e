'use client';

import { Button } from '@/app/_controls/Button';
import styles from '@/app/_workshop/WorkshopParts.module.css';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { DaysOffFields } from './DaysOffFields';
import { WeekBlocks } from './WeekBlocks';

/** What is typed of the blocks of a week and of days off. */
export function HoursFields({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workshop, set } = fields;
  return (
    <>
      {workshop.blocks !== null && (
        <>
          <p className={styles.words}>
            All days that are promised rest on these. A heating-up of the press has to fit into one block.
          </p>
          <WeekBlocks fields={fields} blocks={workshop.blocks} />
          <Button kind="quiet" onPress={() => set('Free blocks', ['blocks'], null)}>
            Leave them unsaid
          </Button>
        </>
      )}
      <h3 className={styles.sub}>Days off</h3>
      <p className={styles.words}>Holidays too: no calendar of any place is known here.</p>
      <DaysOffFields fields={fields} />
    </>
  );
}
