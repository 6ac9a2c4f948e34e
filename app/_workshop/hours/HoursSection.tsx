'use client';

import { Button } from '@/app/_controls/Button';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { FetchedFields } from '@/app/_workshop/ink/FetchedFields';
import { laterParts } from '@/app/_workshop/laterParts';
import styles from '@/app/_workshop/WorkshopParts.module.css';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { usualBlocks } from '@/lib/calendar/usualBlocks';

/** When the bench is free: blocks of a week, and days off. */
export function HoursSection({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workshop, set } = fields;
  return (
    <div id={workshopFieldId(['blocks'])} tabIndex={-1}>
      {workshop.blocks === null && (
        <>
          <p className={styles.words}>
            Not yet said, so no job can be told whether it will be ready in time.
          </p>
          <Button onPress={() => set('Free blocks', ['blocks'], usualBlocks)}>
            Begin with an hour on weekdays and four on Saturday
          </Button>
        </>
      )}
      <FetchedFields part={laterParts.hours} what="The part with the free blocks" fields={fields} />
    </div>
  );
}
