'use client';

import { Button } from '@/app/_controls/Button';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { NumberField } from '@/app/_fields/NumberField';
import { weekdayWords } from '@/app/_words/workshop/workshopWords';
import type { Workshop } from '@/shared/schemas/workshop';
import styles from './WorkshopParts.module.css';
import type { WorkshopFields } from './workshopFields';

/** An evening hour on weekdays and a long Saturday: how most begin. */
const firstWeek: NonNullable<Workshop['freeHours']> = [1, 1, 1, 1, 1, 4, 0];

/** The hours that are free for the bench, day by day. */
export function HoursSection({ fields: { workshop, set } }: Readonly<{ fields: WorkshopFields }>) {
  const { freeHours } = workshop;
  if (freeHours === null)
    return (
      <>
        <p className={styles.words}>Not yet said, so no job can be told whether it will be ready in time.</p>
        <Button onPress={() => set('Free hours', ['freeHours'], firstWeek)}>
          Begin with an hour on weekdays and four on Saturday
        </Button>
      </>
    );
  return (
    <>
      <div className={styles.week}>
        {weekdayWords.map((day, index) => (
          <NumberField
            key={day}
            label={day}
            id={workshopFieldId(['freeHours', index])}
            width="full"
            unit="h"
            value={freeHours[index] ?? null}
            needed
            min={0}
            max={24}
            onCommit={(hours) => set(`Free hours on ${day}`, ['freeHours', index], hours)}
          />
        ))}
      </div>
      <Button kind="quiet" onPress={() => set('Free hours', ['freeHours'], null)}>
        Leave them unsaid
      </Button>
    </>
  );
}
