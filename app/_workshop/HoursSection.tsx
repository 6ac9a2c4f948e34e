'use client';

import { Button } from '@/app/_controls/Button';
import { weekdayWords } from '@/app/_words/workshop/workshopWords';
import { freeHoursOf, usualBlocks } from '@/lib/calendar/freeHours';
import styles from './WorkshopParts.module.css';
import type { WorkshopFields } from './workshopFields';

/** The hours that are free for the bench, day by day. */
export function HoursSection({ fields: { workshop, set } }: Readonly<{ fields: WorkshopFields }>) {
  const free = freeHoursOf(workshop);
  if (free === null)
    return (
      <>
        <p className={styles.words}>Not yet said, so no job can be told whether it will be ready in time.</p>
        <Button onPress={() => set('Free hours', ['blocks'], usualBlocks)}>
          Begin with an hour on weekdays and four on Saturday
        </Button>
      </>
    );
  return (
    <>
      <div className={styles.week}>
        {weekdayWords.map((day, index) => (
          <p key={day}>
            {day} {free[index]}
          </p>
        ))}
      </div>
      <Button kind="quiet" onPress={() => set('Free hours', ['blocks'], null)}>
        Leave them unsaid
      </Button>
    </>
  );
}
