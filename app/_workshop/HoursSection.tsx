'use client';

import { Button } from '@/app/_controls/Button';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { usualBlocks } from '@/lib/calendar/usualBlocks';
import { DaysOffFields } from './DaysOffFields';
import { WeekBlocks } from './WeekBlocks';
import styles from './WorkshopParts.module.css';
import type { WorkshopFields } from './workshopFields';

/** When the bench is free: blocks of a week, and days off. */
export function HoursSection({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workshop, set } = fields;
  const { blocks } = workshop;
  return (
    <>
      <div id={workshopFieldId(['blocks'])} tabIndex={-1}>
        {blocks === null ? (
          <>
            <p className={styles.words}>
              Not yet said, so no job can be told whether it will be ready in time.
            </p>
            <Button onPress={() => set('Free blocks', ['blocks'], usualBlocks)}>
              Begin with an hour on weekdays and four on Saturday
            </Button>
          </>
        ) : (
          <>
            <p className={styles.words}>
              All days that are promised rest on these. A heating-up of the press has to fit into one block.
            </p>
            <WeekBlocks fields={fields} blocks={blocks} />
            <Button kind="quiet" onPress={() => set('Free blocks', ['blocks'], null)}>
              Leave them unsaid
            </Button>
          </>
        )}
      </div>
      <h3 className={styles.sub}>Days off</h3>
      <p className={styles.words}>Holidays too: no calendar of any place is known here.</p>
      <DaysOffFields fields={fields} />
    </>
  );
}
